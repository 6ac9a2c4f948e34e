import { classes } from '@/app/_controls/classes';
import styles from './Slips.module.css';

type SumsProps = Readonly<{
  rows: readonly Readonly<{
    name: string;
    figure: string;
    /** A line stands above it. */
    isSum?: boolean;
    isLoss?: boolean;
  }>[];
}>;

/** Figures under one another with what they are. */
export const Sums = ({ rows }: SumsProps) => (
  <dl className={styles.sums}>
    {rows.map(({ name, figure, isSum = false, isLoss = false }) => (
      <div className={classes(styles.sum, isSum && styles.total, isLoss && styles.loss)} key={name}>
        <dt>{name}</dt>
        <dd>{figure}</dd>
      </div>
    ))}
  </dl>
);
