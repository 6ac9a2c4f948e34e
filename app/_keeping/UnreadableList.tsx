'use client';

import { FindingRow } from '@/app/_controls/FindingRow';
import type { Workspace } from '@/app/_documents/useWorkspace';
import { useTextContext } from '@/app/_fields/useTextContext';
import { saveFile } from '@/app/_files/saveFile';
import { recordReason } from '@/app/_words/store/recordWords';
import { kindWords } from '@/app/_words/store/storedWords';
import { claimedName } from '@/lib/stored/claimedName';
import styles from './UnreadableRecords.module.css';

type UnreadableListProps = Readonly<Pick<Workspace, 'unreadable'>>;

/** A row for each record that nothing here can read: why not, and the way to save it. */
export function UnreadableList({ unreadable }: UnreadableListProps) {
  const context = useTextContext();
  return (
    <ul className={styles.list}>
      {unreadable.map((record, index) => (
        <FindingRow
          // Damaged records may share an id, and none of them ever moves.
          // biome-ignore lint/suspicious/noArrayIndexKey: as above
          key={`${record.id}-${index}`}
          severity="caution"
          sentence={`${nameOf(record)} cannot be read. It stays kept as it is.`}
          detail={`${recordReason(record, context)} Save it as a file, or bring a copy back under Workshop.`}
          fix={{
            label: 'Save it as a file',
            onFix: () => saveFile(`pressminute-record-${record.id || index + 1}.json`, record.raw),
          }}
        />
      ))}
    </ul>
  );
}

// Helpers

function nameOf({ kind, raw }: Workspace['unreadable'][number]): string {
  const name = claimedName(raw);
  return `A ${kindWords(kind)}${name === null ? '' : ` “${name}”`}`;
}
