'use client';

import styles from './TraceChip.module.css';

type TraceChipProps = Readonly<{
  label: string;
  value: string;
  /** Something typed ends the way down; its chip is drawn as a slip that was written on. */
  typed: boolean;
  onOpen: () => void;
}>;

/** One operand of a sum; opens its own sum in turn. */
export function TraceChip({ label, value, typed, onOpen }: TraceChipProps) {
  return (
    <button className={typed ? styles.typed : styles.chip} type="button" onClick={onOpen}>
      <span className={styles.label}>{label}</span> <span className={styles.value}>{value}</span>
    </button>
  );
}
