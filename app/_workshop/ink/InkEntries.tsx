'use client';

import { useRef, useState } from 'react';
import { Disclosure } from '@/app/_controls/Disclosure';
import { RemovedNote } from '@/app/_controls/RemovedNote';
import { useTextContext } from '@/app/_fields/useTextContext';
import { formatterFor } from '@/app/_words/formatter';
import type { WorkshopFields } from '@/app/_workshop/workshopFields';
import type { InkRecord } from '@/lib/ink/record/inkRecordOf';
import type { InkReading } from '@/lib/ink/record/readInkRecord';
import { InkEntryRow, type InkNoted } from './InkEntryRow';
import styles from './InkRecord.module.css';

/** Entries shown before the older ones are folded away. */
const NEWEST = 6;

type InkEntriesProps = Readonly<{
  fields: WorkshopFields;
  record: InkRecord;
  reading: InkReading;
  /** Days on which prints are noted. */
  printDays: ReadonlySet<string>;
}>;

/** Everything noted of ink, newest first. What is taken back stays kept beneath, so that undo has it counted again. */
export function InkEntries({ fields, record, reading, printDays }: InkEntriesProps) {
  const { workspace } = fields;
  const formatter = formatterFor(useTextContext());
  const whole = useRef<HTMLDivElement>(null);
  const [takenBack, setTakenBack] = useState<string | null>(null);
  const farOff = new Set(reading.refills.filter((refill) => refill.isFarOff).map(({ day }) => day));
  const entries = newestFirst(record);
  const takeBack = (noted: InkNoted, name: string) => {
    const label = `Take back ${name}`;
    workspace.note(label, [{ kind: 'takeBack', body: { entryId: noted.id } }]);
    setTakenBack(label);
  };
  const list = (some: readonly InkNoted[]) => (
    <ul className={styles.entries}>
      {some.map((noted) => (
        <InkEntryRow
          // Its own id comes with the write: a correction that is open by then stays open.
          key={workspace.firstId(noted.id)}
          {...{ fields, noted, printDays }}
          isFarOff={noted.kind === 'inkRefill' && farOff.has(noted.body.day)}
          onTakeBack={(name) => takeBack(noted, name)}
          // The row is another one now.
          onCorrected={() => whole.current?.focus()}
        />
      ))}
    </ul>
  );
  return (
    <div className={styles.list} ref={whole} tabIndex={-1}>
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
        how="taken back"
        what={
          takenBack !== null && workspace.undoLabel === takenBack
            ? takenBack.replace(/^Take back /, '')
            : null
        }
        onUndo={() => void workspace.undo()}
      />
    </div>
  );
}

// Helpers

const newestFirst = ({ refills, runs }: InkRecord): readonly InkNoted[] =>
  [
    ...refills.map(({ id, ...body }): InkNoted => ({ kind: 'inkRefill', id, body })),
    ...runs.map(({ id, ...body }): InkNoted => ({ kind: 'inkPrints', id, body })),
  ].sort((a, b) => (a.body.day === b.body.day ? 0 : a.body.day < b.body.day ? 1 : -1));
