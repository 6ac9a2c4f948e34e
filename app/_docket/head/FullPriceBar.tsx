'use client';

import Link from 'next/link';
import type { Ref } from 'react';
import { HeatFigure } from '@/app/_controls/HeatFigure';
import { useJob } from '@/app/_docket/common/useJob';
import { workshopFieldId } from '@/app/_documents/fieldAddress';
import { PriceRuler } from '@/app/_ruler/PriceRuler';
import type { Finding } from '@/shared/finding';
import styles from './FullPriceBar.module.css';
import { OrderTotal } from './OrderTotal';
import { PriceBar } from './PriceBar';
import { PriceLines } from './PriceLines';
import { PriceStop } from './PriceStop';
import type { PriceBarFigures } from './priceBarFigures';
import { usePriceFlag } from './usePriceFlag';

type FullPriceBarProps = Readonly<{
  figures: PriceBarFigures;
  /** The line whose price the flag moves. */
  lineId: string;
  /** “a shirt”, or the name of the line where there are several. */
  whose: string;
  /** The stop of a price that does not pay its own bills; null where none stands. */
  stop: Finding | null;
  at: Ref<HTMLElement>;
}>;

/** The price bar with its figures; moving the flag writes the price of a line. */
export function FullPriceBar({ figures, lineId, whose, stop, at }: FullPriceBarProps) {
  const { input } = useJob();
  const ruler = usePriceFlag(figures, lineId, whose);
  const { workshop, job } = input;
  const channel = workshop.channels.findIndex(({ id }) => id === job.channelId);
  const toChannel = (field: string) => `/workshop#${workshopFieldId(['channels', channel, field])}`;
  const isGuess = figures.state !== 'stands';
  return (
    <PriceBar
      isDashed={isGuess || stop !== null}
      at={at}
      price={
        <PriceLines
          price={figures.price}
          per={`${whose}, ${workshop.currency},${figures.start === null ? '' : ` and ${figures.start} to start,`}${figures.state === 'suggested' ? ' suggested,' : ''}`}
          tax={
            <>
              {workshop.channels[channel]?.taxMode === null ? (
                <Link href={toChannel('taxMode')}>{figures.tax}</Link>
              ) : (
                figures.tax
              )}
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
            {figures.asksForSelling ? (
              <Link href={toChannel('sellingMinutesPerPiece')}>{figures.selling}</Link>
            ) : (
              figures.selling
            )}
          </p>
          {figures.sellingShare !== null && <p className={styles.share}>{figures.sellingShare}</p>}
        </PriceLines>
      }
      end={<OrderTotal figures={figures} />}
      under={stop !== null && <PriceStop stop={stop} />}
    >
      <PriceRuler {...ruler} />
    </PriceBar>
  );
}
