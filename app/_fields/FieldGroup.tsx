import type { ReactNode } from 'react';
import styles from './FieldGroup.module.css';

/** Fields side by side as far as they fit, their boxes on one line. */
export function FieldGroup({ children }: Readonly<{ children: ReactNode }>) {
  return <div className={styles.group}>{children}</div>;
}
