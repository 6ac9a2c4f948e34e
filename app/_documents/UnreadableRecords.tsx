'use client';

import { FindingRow } from '../_figures/FindingRow';
import { kindWords, storedText } from '../_text/storedText';
import { saveFile } from './saveFile';
import styles from './UnreadableRecords.module.css';
import type { Maker } from './useMaker';

type UnreadableRecordsProps = Readonly<{ maker: Maker; level: 2 | 3 }>;

/** Records that are kept though nothing here can read them, each with its reason; nothing where all can be read. */
export function UnreadableRecords({ maker, level }: UnreadableRecordsProps) {
  const { unreadable } = maker;
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
            sentence={`A ${kindWords(record.kind)}${record.id === '' ? '' : ` “${record.id}”`} cannot be read. It stays kept as it is.`}
            detail={record.findings.map(storedText).join(' ') || 'Another record has its place.'}
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
