import type { ReactNode } from 'react';
import styles from './JobSheet.module.css';

type SheetPartProps = Readonly<{
  numeral: number;
  heading: ReactNode;
  /** At the end of the heading's line: how much, how long. */
  aside?: string | undefined;
  children: ReactNode;
}>;

/** One step of the work on the sheet. */
export function SheetPart({ numeral, heading, aside, children }: SheetPartProps) {
  return (
    <section className={styles.part}>
      <span className={styles.numeral} aria-hidden="true">
        {numeral}
      </span>
      <div className={styles.body}>
        <div className={styles.line}>
          <h3 className={styles.heading}>{heading}</h3>
          {aside !== undefined && <p className={styles.aside}>{aside}</p>}
        </div>
        {children}
      </div>
    </section>
  );
}
