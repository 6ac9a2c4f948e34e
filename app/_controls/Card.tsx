import type { ReactNode } from 'react';
import styles from './Card.module.css';

/** One long slip of paper under a heavy ink line; its sections are torn off from top to bottom. */
export function Card({ children }: Readonly<{ children: ReactNode }>) {
  return <div className={styles.card}>{children}</div>;
}
