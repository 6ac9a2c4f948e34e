import styles from './EmptyPriceBar.module.css';
import { PriceBar } from './PriceBar';
import bar from './PricedBar.module.css';
import { PriceLines } from './PriceLines';

type EmptyPriceBarProps = Readonly<{ price: string; per: string; tax: string }>;

/** The price bar before the first price: it takes the same room, so that nothing moves when the price comes. */
export function EmptyPriceBar({ price, per, tax }: EmptyPriceBarProps) {
  return (
    <PriceBar
      isDashed={false}
      price={
        <PriceLines price={price} per={per} tax={tax}>
          <p className={bar.pays}>
            pays you <span className={bar.pay}>–.––</span> an hour
          </p>
        </PriceLines>
      }
      end={<div className={styles.end} />}
    >
      <div className={styles.ruler} />
    </PriceBar>
  );
}
