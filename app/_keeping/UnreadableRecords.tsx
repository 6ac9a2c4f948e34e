'use client';

import { FindingRow } from '@/app/_controls/FindingRow';
import type { Workspace } from '@/app/_documents/useWorkspace';
import { useTextContext } from '@/app/_fields/useTextContext';
import { saveFile } from '@/app/_files/saveFile';
import { recordReason } from '@/app/_words/store/recordWords';
import { kindWords } from '@/app/_words/store/storedWords';
import { claimedName } from '@/lib/stored/claimedName';
import styles from './UnreadableRecords.module.css';

type UnreadableRecordsProps = Readonly<{ workspace: Workspace; level: 2 | 3 }>;

/** Records that are kept though nothing here can read them, each with its reason; nothing where all can be read. */
export function UnreadableRecords({ workspace, level }: UnreadableRecordsProps) {
  const { unreadable } = workspace;
  const context = useTextContext();
  if (unreadable.length === 0) return null;
  const Heading = level === 2 ? 'h2' : 'h3';
  return (
    <section className={styles.records}>
      <Heading>Kept, but not readable</Heading>
      <ul>
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
    </section>
  );
}

function nameOf({ kind, raw }: Workspace['unreadable'][number]): string {
  const name = claimedName(raw);
  return `A ${kindWords(kind)}${name === null ? '' : ` “${name}”`}`;
}
