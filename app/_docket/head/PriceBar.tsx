import type { ReactNode, Ref } from 'react';
import styles from './PriceBar.module.css';

type PriceBarProps = Readonly<{
  /** A dashed bar is a guess, or has no price at all. */
  isDashed: boolean;
  /** The price and what it pays. */
  price: ReactNode;
  /** The ruler, or what keeps it from standing there. */
  children: ReactNode;
  /** What the order comes to, or what to do. */
  end: ReactNode;
  /** What is wrong with a price that stands all the same. */
  under?: ReactNode;
  at?: Ref<HTMLElement>;
}>;

/** The price of the job, its ruler and what the order comes to, at the head of the docket. */
export function PriceBar({ isDashed, price, children, end, under, at }: PriceBarProps) {
  return (
    <section className={styles.room} data-price-bar aria-label="Price" ref={at}>
      <div className={styles.bar} data-dashed={isDashed || undefined}>
        <div className={styles.price}>{price}</div>
        <div className={styles.ruler}>{children}</div>
        <div className={styles.end}>{end}</div>
        {under}
      </div>
    </section>
  );
}
