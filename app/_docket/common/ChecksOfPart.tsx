import type { ReactNode } from 'react';
import styles from './Fieldset.module.css';

/** Boxes to tick, beneath the other fields of a part. */
export function ChecksOfPart({ children }: Readonly<{ children: ReactNode }>) {
  return <div className={styles.checks}>{children}</div>;
}
