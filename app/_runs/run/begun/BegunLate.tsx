import { useMemo } from 'react';
import { FindingRow } from '@/app/_controls/FindingRow';
import styles from '@/app/_runs/run/Run.module.css';
import { findingWords } from '@/app/_words/findings/findingWords';
import { runTable } from '@/app/_words/making/runs/runTable';
import { begunLate } from '@/lib/making/check/doneLate';
import type { BegunOnScreen } from './begunOnScreen';

/** Jobs that the frozen clock has done after the day they are wanted; nothing where none is late. */
export function BegunLate({ on: { standard, jobs, context } }: Readonly<{ on: BegunOnScreen }>) {
  const late = useMemo(() => begunLate(standard, jobs), [standard, jobs]);
  if (late.length === 0) return null;
  return (
    <ul className={styles.rows} aria-label={runTable.late}>
      {late.map((finding) => {
        const { sentence } = findingWords(finding, context);
        return (
          <FindingRow
            key={sentence}
            sentence={sentence}
            detail={runTable.lateMend}
            severity={finding.severity}
          />
        );
      })}
    </ul>
  );
}
