'use client';

import { ChoiceField } from '@/app/_fields/ChoiceField';
import type { Line } from '@/shared/schemas/job';
import styles from './BelowPriceBar.module.css';

type BelowPriceBarProps = Readonly<{
  lines: readonly Line[];
  /** Whose price the flag moves. */
  lineId: string;
  onPick: (lineId: string) => void;
  words: string;
}>;

/** Beneath the price bar: whose price the flag moves, where there are several, and what the marks are. */
export function BelowPriceBar({ lines, lineId, onPick, words }: BelowPriceBarProps) {
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
