'use client';

import { ChoiceField } from '@/app/_fields/ChoiceField';
import type { Line } from '@/shared/schemas/job';
import styles from './BelowPriceBar.module.css';

type UnderPlateProps = Readonly<{
  lines: readonly Line[];
  /** Whose price the flag moves. */
  lineId: string;
  onPick: (lineId: string) => void;
  words: string;
}>;

/** Beneath the plate: whose price the flag moves, where there are several, and what the marks are. */
export function UnderPlate({ lines, lineId, onPick, words }: UnderPlateProps) {
  return (
    <div className={styles.under}>
      {lines.length > 1 && (
        <div className={styles.whose}>
          <span aria-hidden="true">The flag moves the price of</span>
          <ChoiceField
            label="The flag moves the price of"
            labelled
            value={lineId}
            choices={lines.map(({ id, name }) => ({ value: id, label: name }))}
            onCommit={onPick}
          />
        </div>
      )}
      <p className={styles.words}>{words}</p>
    </div>
  );
}
