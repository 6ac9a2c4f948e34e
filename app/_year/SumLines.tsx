import type { SumLine } from '@/app/_words/year/payWords';
import styles from './Year.module.css';

/** Figures under one another with what they are. */
export const SumLines = ({ lines }: Readonly<{ lines: readonly SumLine[] }>) =>
  lines.length === 0 ? null : (
    <dl className={styles.sums}>
      {lines.map(({ name, figure }) => (
        <div className={styles.sum} key={name}>
          <dt>{name}</dt>
          <dd>{figure}</dd>
        </div>
      ))}
    </dl>
  );
