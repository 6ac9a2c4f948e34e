import type { ReactNode } from 'react';
import styles from './CardSection.module.css';
import { classes } from './classes';

type CardSectionProps = Readonly<{
  numeral: number;
  heading: string;
  /** The conclusion in one line, its key figure bold, then the one thing to look at. */
  answer?: ReactNode;
  id: string;
  children?: ReactNode;
}>;

/** A numbered section of a card: what it is about, what it comes to, and beneath it the reasons. */
export function CardSection({ numeral, heading, answer, id, children }: CardSectionProps) {
  return (
    <section
      className={classes(styles.section, numeral > 1 && styles.next)}
      id={id}
      aria-labelledby={`${id}-heading`}
    >
      <span className={styles.numeral} aria-hidden="true">
        {numeral}
      </span>
      <div className={styles.head}>
        {/* Takes the focus of whoever jumps here. */}
        <h2 className={styles.heading} id={`${id}-heading`} tabIndex={-1}>
          {heading}
        </h2>
        {answer && <p className={styles.answer}>{answer}</p>}
      </div>
      {children && <div className={styles.body}>{children}</div>}
    </section>
  );
}

type CardPlaceProps = Readonly<{ numeral: number; heading: string; id: string; className?: string }>;

/** Where a section is about to be drawn: its heading can be seen, and is not read out before there is something under it. */
export const CardPlace = ({ numeral, heading, id, className }: CardPlaceProps) => (
  <section
    className={classes(styles.section, numeral > 1 && styles.next, className)}
    id={id}
    aria-hidden="true"
  >
    <span className={styles.numeral}>{numeral}</span>
    <div className={styles.head}>
      <p className={styles.heading}>{heading}</p>
    </div>
  </section>
);
