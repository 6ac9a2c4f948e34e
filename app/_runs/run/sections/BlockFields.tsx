'use client';

import { Button } from '@/app/_controls/Button';
import { newId } from '@/app/_documents/newId';
import { DateField } from '@/app/_fields/DateField';
import { TimeField } from '@/app/_fields/TimeField';
import type { RunOnScreen } from '@/app/_runBook/runOnScreen';
import styles from '@/app/_runs/run/Run.module.css';
import { weekdayWords } from '@/app/_words/making/runs/runAnswerWords';
import { runTable } from '@/app/_words/making/runs/runTable';
import { minutesWords } from '@/app/_words/minutesWords';
import { addDays } from '@/shared/days';
import type { Run } from '@/shared/schemas/making/run';

const DAY_MINUTES = 1440;
const MOST = 60;
/** An evening, to begin with. */
const EVENING = { fromMinute: 18 * 60, minutes: 3 * 60 } as const;

type Block = NonNullable<Run['ownBlocks']>[number];

/** Times at the bench for this run alone; without any it follows the week of the workshop. */
export function BlockFields({ on }: Readonly<{ on: RunOnScreen }>) {
  const { run, today, planned, locale, change, set } = on;
  const blocks = run.ownBlocks ?? [];
  const put = (id: string, to: Partial<Block>) =>
    change(
      'Block of the run',
      (now) => ({
        ...now,
        ownBlocks: now.ownBlocks?.map((one) => (one.id === id ? { ...one, ...to } : one)) ?? null,
      }),
      `block ${id}`,
    );
  const add = () => {
    const last = blocks.at(-1);
    const day = (last && addDays(last.day, 1)) ?? run.startsOn ?? planned?.plan.firstDay ?? today;
    const block: Block = { id: newId(), day, ...EVENING };
    change('Block of the run', (now) => ({ ...now, ownBlocks: [...(now.ownBlocks ?? []), block] }));
  };
  return (
    <div className={styles.stack}>
      <p className={styles.quiet}>{run.ownBlocks === null ? runTable.weekTold : runTable.blocksTold}</p>
      <ul className={styles.rows}>
        {blocks.map(({ id, day, fromMinute, minutes }) => {
          const end = (fromMinute + minutes) % DAY_MINUTES;
          return (
            <li key={id} className={styles.block}>
              <DateField
                label={runTable.day}
                width="narrow"
                needed
                value={day}
                onCommit={(to) => to !== null && put(id, { day: to })}
              />
              <TimeField
                label={runTable.from}
                value={fromMinute}
                onCommit={(from) => put(id, { fromMinute: from, minutes: minutesTo(from, end) })}
              />
              <TimeField
                label={runTable.to}
                value={end}
                hint={minutes === DAY_MINUTES ? runTable.endsAsItBegins : minutesWords(minutes, locale)}
                onCommit={(to) => put(id, { minutes: minutesTo(fromMinute, to) })}
              />
              <Button
                kind="quiet"
                spoken={runTable.removeBlockOf(weekdayWords(day, locale))}
                onPress={() =>
                  change('Block of the run', (now) => ({
                    ...now,
                    ownBlocks: now.ownBlocks?.filter((one) => one.id !== id) ?? null,
                  }))
                }
              >
                {runTable.removeBlock}
              </Button>
            </li>
          );
        })}
      </ul>
      <div className={styles.ends}>
        {blocks.length < MOST && <Button onPress={add}>{runTable.addBlock}</Button>}
        {run.ownBlocks !== null && (
          <Button onPress={() => set('Blocks of the run', ['ownBlocks'], null)}>{runTable.followWeek}</Button>
        )}
      </div>
    </div>
  );
}

// Helpers

/** One that ends at or before its beginning runs into the next day. */
const minutesTo = (from: number, to: number): number => (to > from ? to - from : to - from + DAY_MINUTES);
