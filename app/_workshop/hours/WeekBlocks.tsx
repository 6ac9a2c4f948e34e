'use client';

import { useEffect, useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { focusById } from '@/app/_controls/focusById';
import { RemovedNote } from '@/app/_controls/RemovedNote';
import { workshopFieldId } from '@/app/_documents/fieldAddress';
import { newId } from '@/app/_documents/newId';
import { typing } from '@/app/_documents/typing';
import { minutesWords } from '@/app/_words/minutesWords';
import { blockWords } from '@/app/_words/workshop/hoursWords';
import { weekdayWords } from '@/app/_words/workshop/workshopWords';
import type { WorkshopFields } from '@/app/_workshop/workshopFields';
import { calendarOf } from '@/lib/calendar/calendar';
import { minutesOfWeekdays } from '@/lib/calendar/freeMinutes';
import { nextBlock, overlapping } from '@/lib/calendar/weekEdits';
import { mostEntries } from '@/shared/limits';
import type { Block } from '@/shared/schemas/benchWeek';
import { workshopSchema } from '@/shared/schemas/workshop';
import { BlockRow } from './BlockRow';
import { CopyDay } from './CopyDay';
import styles from './Hours.module.css';

const most = mostEntries(workshopSchema, ['blocks']);

/** The blocks of each weekday: added, changed, removed, copied to other days. */
export function WeekBlocks({
  fields,
  blocks,
}: Readonly<{ fields: WorkshopFields; blocks: readonly Block[] }>) {
  const { workspace, workshop, set } = fields;
  const { locale } = workshop;
  const [removed, setRemoved] = useState<string | null>(null);
  const [added, setAdded] = useState<number | null>(null);
  useEffect(() => {
    if (added !== null) focusById(workshopFieldId(['blocks', added, 'fromMinute']));
  }, [added]);
  const free = minutesOfWeekdays(calendarOf({ blocks: [...blocks], daysOff: [] }) ?? { week: [], off: [] });
  const doubled = overlapping(blocks);
  const add = (weekday: number) => {
    typing.ends();
    const block = { ...nextBlock(blocks, weekday), id: newId() };
    set(`Add ${blockWords(block, locale)}`, ['blocks', blocks.length], block);
    setAdded(blocks.length);
  };
  const remove = (block: Block) => {
    typing.ends();
    const name = blockWords(block, locale);
    set(
      `Remove ${name}`,
      ['blocks'],
      blocks.filter(({ id }) => id !== block.id),
    );
    setAdded(null);
    setRemoved(name);
  };
  return (
    <>
      {weekdayWords.map((day, weekday) => (
        <section className={styles.day} key={day} aria-labelledby={`hours-${weekday}`}>
          <h3 className={styles.name} id={`hours-${weekday}`}>
            {day}
            <span className={styles.free}>
              {free[weekday] ? `${minutesWords(free[weekday] ?? 0, locale)} free` : 'not free'}
            </span>
          </h3>
          <div className={styles.rows}>
            {blocks.some((block) => block.weekday === weekday) && (
              <ul className={styles.rows}>
                {blocks.map(
                  (block, index) =>
                    block.weekday === weekday && (
                      <BlockRow
                        key={block.id}
                        {...{ fields, block, index }}
                        overlaps={doubled.has(block.id)}
                        onRemove={() => remove(block)}
                      />
                    ),
                )}
              </ul>
            )}
            <div>
              <Button
                kind="quiet"
                spoken={`Add a block on ${day}`}
                blockedBy={blocks.length >= most ? `${most} is the most there can be.` : undefined}
                onPress={() => add(weekday)}
              >
                Add a block
              </Button>
            </div>
          </div>
        </section>
      ))}
      <RemovedNote
        what={workspace.undoLabel === `Remove ${removed}` ? removed : null}
        onUndo={() => void workspace.undo()}
      />
      <CopyDay blocks={blocks} most={most} onCopy={(label, copied) => set(label, ['blocks'], copied)} />
    </>
  );
}
