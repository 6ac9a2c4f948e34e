import type { ReactNode } from 'react';
import styles from './Fieldset.module.css';

/** Parts one under the other, evenly apart. */
export function Fieldsets({ children }: Readonly<{ children: ReactNode }>) {
  return <div className={styles.parts}>{children}</div>;
}
