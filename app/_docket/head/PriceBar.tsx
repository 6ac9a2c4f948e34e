import type { ReactNode } from 'react';
import { HeatFigure } from '@/app/_controls/HeatFigure';
import styles from './PriceBar.module.css';

type PriceBarProps = Readonly<{
  price: string;
  /** After the price: "a shirt". */
  per: string;
  /** Under it: "margin 40.5 % · markup 68.2 %". */
  underPrice: string;
  pay: string;
  /** After the pay: "an hour". */
  payPer: string;
  underPay: string;
  /** Words for figures that are old because a stop withholds new ones; null when they are current. */
  stale?: string | undefined;
  /** The ruler. */
  children: ReactNode;
}>;

/** The price, its ruler and what it pays, in sight at the top, or on a phone at the thumb. */
export function PriceBar(props: PriceBarProps) {
  const { price, per, underPrice, pay, payPer, underPay, stale, children } = props;
  return (
    <section className={styles.bar} data-price-bar data-stale={stale ? true : undefined} aria-label="Price">
      <div className={styles.price}>
        <p className={styles.line}>
          <span className={styles.big}>
            <HeatFigure text={price} face="display" />
          </span>{' '}
          <span className={styles.per}>{per}</span>
        </p>
        <p className={styles.under}>{stale ?? underPrice}</p>
      </div>
      <div className={styles.ruler}>{children}</div>
      <div className={styles.pay}>
        <p className={styles.paysYou}>this job pays you</p>
        <p className={styles.line}>
          <span className={styles.mid}>
            <HeatFigure text={pay} face="display" />
          </span>{' '}
          <span className={styles.per}>{payPer}</span>
        </p>
        <p className={styles.under}>{underPay}</p>
      </div>
    </section>
  );
}
