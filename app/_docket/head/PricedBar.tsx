import Link from 'next/link';
import type { ReactNode, Ref } from 'react';
import { HeatFigure } from '@/app/_controls/HeatFigure';
import { OrderTotal } from './OrderTotal';
import { PriceBar } from './PriceBar';
import styles from './PricedBar.module.css';
import { PriceLines } from './PriceLines';
import type { PriceBarFigures } from './priceBarFigures';

type PricedBarProps = Readonly<{
  figures: Omit<PriceBarFigures, 'format' | 'firstTypical'>;
  /** “a shirt”, or the name of the line where there are several. */
  whose: string;
  currency: string;
  /** Where tax is decided; null where it is. */
  toTax: string | null;
  /** Where the time of selling is told. */
  toSelling: string;
  /** The ruler. */
  children: ReactNode;
  /** How many figures are typical, and the way to them. */
  typical: ReactNode;
  /** What is wrong with a price that stands all the same; false where nothing is. */
  stop: ReactNode;
  at?: Ref<HTMLElement>;
}>;

/** The price bar with its figures, as it is sent in the page and as it lives on the docket. */
export function PricedBar(props: PricedBarProps) {
  const { figures, whose, currency, toTax, toSelling, children, typical, stop, at } = props;
  const hasStop = stop !== false;
  const isGuess = figures.state !== 'stands';
  return (
    <PriceBar
      isDashed={isGuess || hasStop}
      {...(at !== undefined && { at })}
      price={
        <PriceLines
          price={figures.price}
          per={`${whose}, ${currency},${figures.start === null ? '' : ` and ${figures.start} to start,`}${figures.state === 'suggested' ? ' suggested,' : ''}`}
          tax={
            <>
              {toTax === null ? figures.tax : <Link href={toTax}>{figures.tax}</Link>}
              {figures.withoutTax !== null && <span className={styles.net}>{figures.withoutTax}</span>}
            </>
          }
        >
          <p className={styles.pays}>
            {isGuess ? 'would pay you' : 'pays you'}{' '}
            <span className={styles.pay}>
              <HeatFigure text={figures.pay} face="display" figure="pay" />
            </span>{' '}
            an hour,{' '}
            {figures.asksForSelling ? <Link href={toSelling}>{figures.selling}</Link> : figures.selling}
          </p>
          {figures.sellingShare !== null && <p className={styles.share}>{figures.sellingShare}</p>}
        </PriceLines>
      }
      end={<OrderTotal figures={figures} typical={typical} />}
      under={stop}
    >
      {children}
    </PriceBar>
  );
}
