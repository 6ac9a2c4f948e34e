import styles from './RulerList.module.css';
import type { RulerMark } from './rulerMark';

type RulerListProps = Readonly<{
  /** In the order of their values. */
  marks: readonly RulerMark[];
  format: (value: number) => string;
}>;

/** Where not even the figures find room beside one another: one mark a row. */
export function RulerList({ marks, format }: RulerListProps) {
  return (
    <dl className={styles.list}>
      {marks.map(({ id, label, value }) => (
        <div className={styles.row} key={id}>
          <dt className={styles.name}>{label}</dt>
          <dd className={styles.figure}>{format(value)}</dd>
        </div>
      ))}
    </dl>
  );
}
