'use client';

import { useState } from 'react';
import { useJobDesk } from '@/app/_docket/common/jobForm';
import { useTextContext } from '@/app/_fields/useTextContext';
import type { PricedJob } from '@/app/_pricing/usePricedJob';
import { pieceWord } from '@/app/_words/docket/pieceWords';
import { speakerOf } from '@/app/_words/formatter';
import { formatMinor, toMinor } from '@/shared/money';
import { UnderPlate } from './BelowPriceBar';
import { EmptyPlate } from './EmptyPriceBar';
import { FullPlate } from './FullPriceBar';
import { plateFigures } from './priceBarFigures';
import { rulerWords } from './rulerWords';

type PricePlateOfJobProps = Readonly<{
  /** The newest answer with prices and the documents it answers; null before the first. */
  priced: PricedJob | null;
  /** True while a stop withholds newer prices. */
  stale: boolean;
}>;

/** The price of the job on its plate, and beneath it what the marks are. */
export function PricePlateOfJob({ priced, stale }: PricePlateOfJobProps) {
  const { input } = useJobDesk();
  const context = useTextContext();
  const speak = speakerOf(context);
  const [pickedLine, setLine] = useState<string | null>(null);
  const { lines, channelId } = input.job;
  const line = lines.find(({ id }) => id === pickedLine) ?? lines[0];
  if (line === undefined) return null;
  const { currency, channels } = input.workshop;
  const whose = lines.length > 1 ? line.name : `a ${pieceWord(input.blanks[line.blankId]).one}`;
  const per = `${currency}${lines.length > 1 ? ' ·' : ''} ${whose}`;
  // Old figures go with the price they were made for.
  const shown = (stale && priced?.input.job.lines.find(({ id }) => id === line.id)) || line;
  const figures = priced && plateFigures(priced.answer, shown, { speak, locale: context.locale });
  const channel = channels.find(({ id }) => id === channelId);
  const words = !stale
    ? rulerWords(figures, channel, speak)
    : figures === null
      ? 'A stop stands: the figures come as soon as it is mended. See the checks below.'
      : 'A stop stands, so these are the last good figures. See the checks below.';
  return (
    <>
      {figures === null ? (
        <EmptyPlate
          price={
            line.askedPrice === null
              ? '–.––'
              : formatMinor(toMinor(line.askedPrice, currency), currency, context.locale)
          }
          per={per}
          stale={stale}
        />
      ) : (
        <FullPlate figures={figures} lineId={line.id} whose={whose} per={per} stale={stale} />
      )}
      <UnderPlate lines={lines} lineId={line.id} onPick={setLine} words={words} />
    </>
  );
}
