'use client';

import { useIndexSheet } from '@/app/_docket/common/indexSheet';
import { PriceRuler } from '@/app/_ruler/PriceRuler';
import type { PriceBarFigures } from './priceBarFigures';
import styles from './ScrolledPrice.module.css';
import { usePriceFlag } from './usePriceFlag';

type ScrolledPriceProps = Readonly<{
  /** Null while there is no price. */
  figures: PriceBarFigures | null;
  name: string;
  lineId: string;
  whose: string;
}>;

/** The price in short while its bar is out of sight: along the top, or on a phone at the thumb. */
export function ScrolledPrice({ figures, name, lineId, whose }: ScrolledPriceProps) {
  const openIndex = useIndexSheet();
  return (
    <aside className={styles.bar} data-scrolled-price aria-label="Price in short">
      <p className={styles.name}>{name}</p>
      {figures === null ? (
        <p className={styles.none}>no price until the stop is mended</p>
      ) : (
        <Figures {...{ figures, lineId, whose }} />
      )}
      <button className={styles.index} type="button" aria-label="Index of this job" onClick={openIndex}>
        <svg viewBox="0 0 24 24" aria-hidden="true" focusable="false">
          <path d="M4 7h2M4 12h2M4 17h2M9 7h11M9 12h11M9 17h11" />
        </svg>
      </button>
    </aside>
  );
}

// Helpers

type FiguresProps = Readonly<{ figures: PriceBarFigures; lineId: string; whose: string }>;

function Figures({ figures, lineId, whose }: FiguresProps) {
  const ruler = usePriceFlag(figures, lineId, whose);
  return (
    <>
      <p className={styles.price}>
        <strong className={styles.figure} data-figure="price">
          {figures.price}
        </strong>{' '}
        <span className={styles.per}>
          {whose}, {figures.tax}
        </span>
      </p>
      <div className={styles.ruler}>
        <PriceRuler {...ruler} size="slim" />
      </div>
      <p className={styles.pay}>
        <strong data-figure="pay">{figures.pay}</strong> an hour
      </p>
      {figures.total !== null && (
        <p className={styles.total}>
          <strong data-figure="total">{figures.total}</strong> {figures.totalFor}
        </p>
      )}
    </>
  );
}
