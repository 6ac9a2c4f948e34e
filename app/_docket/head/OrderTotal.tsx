import type { ReactNode } from 'react';
import { HeatFigure } from '@/app/_controls/HeatFigure';
import styles from './OrderTotal.module.css';
import type { PriceBarFigures } from './priceBarFigures';

type OrderTotalProps = Readonly<{
  figures: Pick<PriceBarFigures, 'total' | 'totalFor' | 'totalTax' | 'margin'>;
  /** How many figures are typical, and the way to them. */
  typical: ReactNode;
}>;

/** What the order comes to, what it leaves, and how much of that nobody has told yet. */
export function OrderTotal({ figures, typical }: OrderTotalProps) {
  return (
    <>
      <p className={styles.total}>
        {figures.total !== null && (
          <span className={styles.sum}>
            <HeatFigure text={figures.total} face="display" figure="total" />
          </span>
        )}{' '}
        <span className={styles.words}>
          {[figures.totalFor, figures.totalTax].filter((part) => part !== null).join('; ')}
        </span>
      </p>
      <p className={styles.words}>
        margin <HeatFigure text={figures.margin} figure="margin" />
      </p>
      <p className={styles.words}>{typical}</p>
    </>
  );
}
