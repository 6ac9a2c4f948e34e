import type { ReactNode } from 'react';
import styles from './CardSection.module.css';

type CardSectionProps = Readonly<{
  numeral: number;
  heading: string;
  /** One grey line that says the state in words. */
  line?: ReactNode;
  id: string;
  children: ReactNode;
}>;

/** A numbered section of the docket, with the line to tear along above it. */
export function CardSection({ numeral, heading, line, id, children }: CardSectionProps) {
  return (
    <section className={styles.section} id={id} aria-labelledby={`${id}-heading`}>
      <span className={styles.numeral} aria-hidden="true">
        {numeral}
      </span>
      <div className={styles.head}>
        <h2 id={`${id}-heading`}>{heading}</h2>
        {line && <p className={styles.line}>{line}</p>}
      </div>
      <div className={styles.body}>{children}</div>
    </section>
  );
}
