'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { Disclosure } from '@/app/_controls/Disclosure';
import { RemovedNote } from '@/app/_controls/RemovedNote';
import { useTextContext } from '@/app/_fields/useTextContext';
import { formatterFor } from '@/app/_words/formatter';
import { volumeText } from '@/app/_words/workshop/inkWords';
import type { InkReading } from '@/lib/ink/record/readInkRecord';
import type { InkRecord } from '@/shared/schemas/inkRecord';
import styles from './InkRecord.module.css';
import type { WorkshopFields } from './workshopFields';

/** Entries shown before the older ones are folded away. */
const NEWEST = 6;

interface Entry {
  readonly id: string;
  readonly day: string;
  readonly of: 'refills' | 'runs';
  readonly name: string;
  readonly words: string;
  readonly isFarOff: boolean;
}

/** Everything noted of ink, newest first; each can be taken away, and undo brings it back. */
export function InkEntries({ fields, reading }: Readonly<{ fields: WorkshopFields; reading: InkReading }>) {
  const { workspace, workshop } = fields;
  const formatter = formatterFor(useTextContext());
  const [removed, setRemoved] = useState<string | null>(null);
  const farOff = new Set(reading.refills.filter((refill) => refill.isFarOff).map(({ day }) => day));
  const entries = entriesOf(workshop.inkRecord);
  const remove = (entry: Entry) => {
    const label = `Remove ${entry.name} of ${formatter.day(entry.day)}`;
    workspace.changeWorkshop(label, (now) => ({
      ...now,
      inkRecord: {
        ...now.inkRecord,
        [entry.of]: now.inkRecord[entry.of].filter(({ id }) => id !== entry.id),
      },
    }));
    setRemoved(label);
  };
  const list = (some: readonly Entry[]) => (
    <ul className={styles.entries}>
      {some.map((entry) => (
        <li key={entry.id} className={styles.entry}>
          <span className={styles.day}>{formatter.day(entry.day)}</span>
          <span className={styles.what}>
            <strong>{entry.name}</strong> {entry.words}
            {entry.isFarOff && <em className={styles.far}> far from what its prints explain</em>}
          </span>
          <Button kind="quiet" onPress={() => remove(entry)}>
            Remove{' '}
            <span className="visuallyHidden">
              {entry.name} of {formatter.day(entry.day)}
            </span>
          </Button>
        </li>
      ))}
    </ul>
  );
  return (
    <div className={styles.list}>
      {entries.length === 0 && <p className={styles.none}>Nothing is noted yet.</p>}
      {list(entries.slice(0, NEWEST))}
      {entries.length > NEWEST && (
        <Disclosure
          id="ink-older"
          level={4}
          heading="Older entries"
          line={formatter.count(entries.length - NEWEST, 'entry', 'entries')}
        >
          {list(entries.slice(NEWEST))}
        </Disclosure>
      )}
      <RemovedNote
        what={removed !== null && workspace.undoLabel === removed ? removed.replace(/^Remove /, '') : null}
        onUndo={() => void workspace.undo()}
      />
    </div>
  );

  function entriesOf({ refills, runs }: InkRecord): readonly Entry[] {
    return [
      ...refills.map(
        ({ id, day, mL }): Entry => ({
          id,
          day,
          of: 'refills',
          name: 'Refill',
          words: volumeText(mL, workshop, formatter),
          isFarOff: farOff.has(day),
        }),
      ),
      ...runs.map(
        ({ id, day, name, prints, total, widthMm, heightMm, sessions }): Entry => ({
          id,
          day,
          of: 'runs',
          name,
          words: `${formatter.count(prints, 'print')}, ${formatter.size(widthMm, heightMm)}, ${formatter.share(total)} of ink, ${formatter.count(sessions, 'session')}`,
          isFarOff: false,
        }),
      ),
    ].sort((a, b) => (a.day === b.day ? 0 : a.day < b.day ? 1 : -1));
  }
}
