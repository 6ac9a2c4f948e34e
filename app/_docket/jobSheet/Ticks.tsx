import type { ReactNode } from 'react';
import styles from './JobSheet.module.css';

/** Things to tick off, one after the other. */
export const Ticks = ({ children }: Readonly<{ children: ReactNode }>) => (
  <ul className={styles.ticks}>{children}</ul>
);

/** A thing to tick off. */
export const Tick = ({ children }: Readonly<{ children: ReactNode }>) => (
  <li className={styles.tick}>
    <span className={styles.box} aria-hidden="true" />
    <span>{children}</span>
  </li>
);
