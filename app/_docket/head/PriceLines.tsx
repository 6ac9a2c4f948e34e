import type { ReactNode } from 'react';
import { classes } from '@/app/_controls/classes';
import { HeatFigure } from '@/app/_controls/HeatFigure';
import styles from './PriceLines.module.css';

type PriceLinesProps = Readonly<{
  price: string;
  /** After it: “a shirt, USD,”. */
  per: string;
  /** Beneath that: “tax added later”. */
  tax: ReactNode;
  /** What it pays, in one line. */
  children: ReactNode;
}>;

/** More figures than this are set smaller, so that the line holds. */
const MOST_LARGE = 8;

/** The one large figure of the docket, and what it pays. */
export function PriceLines({ price, per, tax, children }: PriceLinesProps) {
  return (
    <>
      <p className={styles.line}>
        <span className={classes(styles.big, price.length > MOST_LARGE && styles.long)}>
          <HeatFigure text={price} face="display" figure="price" />
        </span>{' '}
        <span className={styles.per}>
          {per} <span className={styles.tax}>{tax}</span>
        </span>
      </p>
      {children}
    </>
  );
}
