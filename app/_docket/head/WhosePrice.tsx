'use client';

import { ChoiceField } from '@/app/_fields/ChoiceField';
import type { Line } from '@/shared/schemas/job';
import styles from './WhosePrice.module.css';

type WhosePriceProps = Readonly<{
  lines: readonly Line[];
  /** Whose price the flag moves. */
  lineId: string;
  onPick: (lineId: string) => void;
}>;

/** Beneath the price bar of several lines: whose price stands there, and that the marks are of all. */
export function WhosePrice({ lines, lineId, onPick }: WhosePriceProps) {
  return (
    <div className={styles.whose}>
      <span aria-hidden="true">The flag moves the price of</span>
      <ChoiceField
        label="The flag moves the price of"
        labelled
        value={lineId}
        choices={lines.map(({ id, name }) => ({ value: id, label: name }))}
        onCommit={onPick}
      />
      <span>The marks are averages over all pieces.</span>
    </div>
  );
}
