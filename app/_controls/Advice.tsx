import type { ReactNode } from 'react';
import styles from './Advice.module.css';
import { classes } from './classes';
import { type Severity, SeverityShape } from './SeverityShape';

type AdviceProps = Readonly<{ severity: Severity; children: ReactNode }>;

/** A sentence to bear in mind, beside the fields it speaks of. */
export function Advice({ severity, children }: AdviceProps) {
  return (
    <div className={classes(styles.advice, styles[severity])}>
      <SeverityShape severity={severity} />
      <p className={styles.words}>{children}</p>
    </div>
  );
}
