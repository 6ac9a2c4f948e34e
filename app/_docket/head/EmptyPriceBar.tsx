import styles from './EmptyPriceBar.module.css';
import { PriceBar } from './PriceBar';

type EmptyPriceBarProps = Readonly<{ price: string; per: string; stale: boolean }>;

/** The price bar before the first price: it takes the same room, so that nothing moves when the price comes. */
export function EmptyPriceBar({ price, per, stale }: EmptyPriceBarProps) {
  return (
    <PriceBar
      price={price}
      per={per}
      underPrice="margin –.– % · markup –.– %"
      pay="–.––"
      payPer="an hour"
      underPay="– h –– min of your time"
      stale={stale ? 'no figures yet' : undefined}
    >
      <div className={styles.ruler} />
    </PriceBar>
  );
}
