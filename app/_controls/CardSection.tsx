import type { ReactNode } from 'react';
import styles from './CardSection.module.css';
import { classes } from './classes';

type CardSectionProps = Readonly<{
  /** Null where the sections of a card are in no order. */
  numeral: number | null;
  /** The first of a card, where no numeral tells. */
  isFirst?: boolean;
  heading: string;
  /** The conclusion in one line, its key figure bold, then the one thing to look at. */
  answer?: ReactNode;
  id: string;
  children?: ReactNode;
}>;

/** A section of a card: what it is about, what it comes to, and beneath it the reasons. */
export function CardSection({ numeral, isFirst = false, heading, answer, id, children }: CardSectionProps) {
  const isNext = numeral === null ? !isFirst : numeral > 1;
  return (
    <section
      className={classes(styles.section, numeral === null && styles.plain, isNext && styles.next)}
      id={id}
      aria-labelledby={`${id}-heading`}
    >
      {numeral !== null && (
        <span className={styles.numeral} aria-hidden="true">
          {numeral}
        </span>
      )}
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
