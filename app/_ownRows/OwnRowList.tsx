'use client';

import type { CostSheet } from '@/lib/grid/costSheet';
import type { Finding } from '@/shared/finding';
import type { OwnRow } from '@/shared/schemas/ownRow';
import type { FieldPath } from '@/shared/setIn';
import { OwnRowEditor } from './OwnRowEditor';
import styles from './OwnRowList.module.css';

type OwnRowListProps = Readonly<{
  /** Whose rows they are; a row of the workshop counts in every job. */
  of: 'job' | 'workshop';
  rows: readonly OwnRow[];
  /** Own rows of job and workshop together, which a formula may not name. */
  everyRow: readonly OwnRow[];
  /** Most placements on a line: names of so many can be used in a formula. */
  placements: number;
  findings: readonly Finding[];
  /** Where the rows' results are read; null while there are none. */
  sheet: CostSheet | null;
  onSet: (label: string, path: FieldPath, value: unknown) => void;
  onRemove: (row: OwnRow) => void;
}>;

/** Own rows one under the other, each a line that unfolds. */
export function OwnRowList({ rows, ...rest }: OwnRowListProps) {
  if (rows.length === 0) return null;
  return (
    <ul className={styles.rows}>
      {rows.map((row, index) => (
        <OwnRowEditor key={row.id} {...{ row, index }} {...rest} />
      ))}
    </ul>
  );
}
