import type { ReactNode } from 'react';
import styles from './RowList.module.css';

/** Things kept or noted, a row each. */
export function RowList({ label, children }: Readonly<{ label?: string; children: ReactNode }>) {
  return (
    <ul className={styles.list} aria-label={label}>
      {children}
    </ul>
  );
}

type ListRowProps = Readonly<{
  /** What can be done with it. */
  acts: ReactNode;
  /** What one of them unfolds, beneath. */
  unfolded?: ReactNode;
  children: ReactNode;
}>;

export function ListRow({ acts, unfolded, children }: ListRowProps) {
  return (
    <li className={styles.row}>
      <div className={styles.words}>{children}</div>
      <div className={styles.acts}>{acts}</div>
      {unfolded && <div className={styles.unfolded}>{unfolded}</div>}
    </li>
  );
}
