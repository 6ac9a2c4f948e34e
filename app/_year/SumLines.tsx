import { classes } from '@/app/_controls/classes';
import type { SumLine } from '@/app/_words/year/payWords';
import styles from './Year.module.css';

/** Figures under one another with what they are. */
export const SumLines = ({ lines }: Readonly<{ lines: readonly SumLine[] }>) =>
  lines.length === 0 ? null : (
    <dl className={styles.sums}>
      {lines.map(({ name, figure, isTotal = false }) => (
        <div className={classes(styles.sum, isTotal && styles.total)} key={name}>
          <dt>{name}</dt>
          <dd>{figure}</dd>
        </div>
      ))}
    </dl>
  );
