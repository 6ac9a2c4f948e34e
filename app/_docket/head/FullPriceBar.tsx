'use client';

import type { Ref } from 'react';
import { useJob } from '@/app/_docket/common/useJob';
import { workshopFieldId } from '@/app/_documents/fieldAddress';
import { PriceRuler } from '@/app/_ruler/PriceRuler';
import type { Finding } from '@/shared/finding';
import { PricedBar } from './PricedBar';
import { PriceStop } from './PriceStop';
import type { PriceBarFigures } from './priceBarFigures';
import { ToFirstTypical } from './ToFirstTypical';
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
  return (
    <PricedBar
      {...{ figures, whose, at }}
      currency={workshop.currency}
      toTax={workshop.channels[channel]?.taxMode === null ? toChannel('taxMode') : null}
      toSelling={toChannel('sellingMinutesPerPiece')}
      typical={<ToFirstTypical words={figures.typicalWords} first={figures.firstTypical} />}
      stop={stop !== null && <PriceStop stop={stop} />}
    >
      <PriceRuler {...ruler} />
    </PricedBar>
  );
}
