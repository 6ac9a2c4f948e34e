import styles from './EmptyPriceBar.module.css';
import { PricePlate } from './PriceBar';

type EmptyPlateProps = Readonly<{ price: string; per: string; stale: boolean }>;

/** The plate before the first price: it takes the same room, so that nothing moves when the price comes. */
export function EmptyPlate({ price, per, stale }: EmptyPlateProps) {
  return (
    <PricePlate
      price={price}
      per={per}
      underPrice="margin –.– % · markup –.– %"
      pay="–.––"
      payPer="an hour"
      underPay="– h –– min of your time"
      stale={stale ? 'no figures yet' : undefined}
    >
      <div className={styles.ruler} />
    </PricePlate>
  );
}
