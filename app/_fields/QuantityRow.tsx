import type { ReactNode } from 'react';
import styles from './QuantityRow.module.css';

type QuantityRowProps = Readonly<{
  /** What is counted; read before each size by a screen reader. */
  label: string;
  /** The sum in words or figures, after the last box. */
  total?: ReactNode;
  children: ReactNode;
}>;

/** A row of counts, size beside size, with their sum. */
export function QuantityRow({ label, total, children }: QuantityRowProps) {
  return (
    <fieldset className={styles.set}>
      <legend className="visuallyHidden">{label}</legend>
      <div className={styles.row}>
        {children}
        {total !== undefined && <output className={styles.total}>= {total}</output>}
      </div>
    </fieldset>
  );
}
