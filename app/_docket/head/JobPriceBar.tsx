'use client';

import { useState } from 'react';
import { useJob } from '@/app/_docket/common/useJob';
import { useTextContext } from '@/app/_fields/useTextContext';
import { pieceWords } from '@/app/_words/docket/pieceWords';
import { formatterFor } from '@/app/_words/formatter';
import { formatMinor, toMinor } from '@/shared/money';
import { BelowPriceBar } from './BelowPriceBar';
import { EmptyPriceBar } from './EmptyPriceBar';
import { FullPriceBar } from './FullPriceBar';
import { priceBarFigures } from './priceBarFigures';
import { rulerWords } from './rulerWords';

/** The price of the job on its price bar, and beneath it what the marks are. */
export function JobPriceBar() {
  const { input, prices } = useJob();
  const { answer, madeOf, stale } = prices;
  const context = useTextContext();
  const formatter = formatterFor(context);
  const [pickedLine, setLine] = useState<string | null>(null);
  const { lines, channelId } = input.job;
  const line = lines.find(({ id }) => id === pickedLine) ?? lines[0];
  if (line === undefined) return null;
  const { currency, channels } = input.workshop;
  const whose = lines.length > 1 ? line.name : `a ${pieceWords(input.blanks[line.blankId]).one}`;
  const per = `${currency}${lines.length > 1 ? ' ·' : ''} ${whose}`;
  // Old figures go with the price they were made for.
  const shown = (stale && madeOf.job.lines.find(({ id }) => id === line.id)) || line;
  const figures = answer && priceBarFigures(answer, shown, { formatter, locale: context.locale });
  const channel = channels.find(({ id }) => id === channelId);
  const words = !stale
    ? rulerWords(figures, channel, formatter)
    : figures === null
      ? 'A stop stands: the figures come as soon as it is mended. See the checks below.'
      : 'A stop stands, so these are the last good figures. See the checks below.';
  return (
    <>
      {figures === null ? (
        <EmptyPriceBar
          price={
            line.askedPrice === null
              ? '–.––'
              : formatMinor(toMinor(line.askedPrice, currency), currency, context.locale)
          }
          per={per}
          stale={stale}
        />
      ) : (
        <FullPriceBar figures={figures} lineId={line.id} whose={whose} per={per} stale={stale} />
      )}
      <BelowPriceBar lines={lines} lineId={line.id} onPick={setLine} words={words} />
    </>
  );
}
