import type { ReactNode } from 'react';
import { classes } from '@/app/_controls/classes';
import styles from './FieldGroup.module.css';

type FieldGroupProps = Readonly<{
  /** Short fields, which stand in pairs on a phone. */
  pairs?: boolean;
  children: ReactNode;
}>;

/** Fields side by side as far as they fit, their boxes on one line. */
export function FieldGroup({ pairs = false, children }: FieldGroupProps) {
  return <div className={classes(styles.group, pairs && styles.pairs)}>{children}</div>;
}
