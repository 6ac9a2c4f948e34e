'use client';

import { useRef, useState } from 'react';
import { useJob } from '@/app/_docket/common/useJob';
import { useTextContext } from '@/app/_fields/useTextContext';
import { pieceWords } from '@/app/_words/docket/pieceWords';
import { priceTaxWords } from '@/app/_words/docket/priceHeadWords';
import { formatterFor } from '@/app/_words/formatter';
import { isStanding } from '@/shared/finding';
import { formatMinor, toMinor } from '@/shared/money';
import { EmptyPriceBar } from './EmptyPriceBar';
import { FullPriceBar } from './FullPriceBar';
import { priceBarFigures } from './priceBarFigures';
import { ScrolledPrice } from './ScrolledPrice';
import { StoppedPriceBar } from './StoppedPriceBar';
import { useOutOfSight } from './useOutOfSight';
import { WhosePrice } from './WhosePrice';

/** The price of the job in its bar; in short along an edge of the screen while the bar is scrolled away. */
export function JobPriceBar() {
  const { input, findings, prices } = useJob();
  const { answer, stale } = prices;
  const context = useTextContext();
  const formatter = formatterFor(context);
  const [pickedLine, setLine] = useState<string | null>(null);
  const bar = useRef<HTMLElement>(null);
  const isOutOfSight = useOutOfSight(bar);
  const { lines, channelId } = input.job;
  const line = lines.find(({ id }) => id === pickedLine) ?? lines[0];
  if (line === undefined) return null;
  const { currency, channels } = input.workshop;
  const piece = pieceWords(input.blanks[line.blankId]);
  const whose = lines.length > 1 ? line.name : `a ${piece.one}`;
  const newest = answer && priceBarFigures(answer, line.id, { formatter, locale: context.locale, piece });
  // A price under its floor is not withheld, as the prices are the way out of it.
  const low = findings.filter((finding) => isStanding(finding) && finding.id === 'RATE-08');
  const stop = low.find(({ where }) => where.lineId === line.id) ?? low[0] ?? null;
  const isStopped = stale || (newest === null && findings.some(isStanding));
  const figures = isStopped ? null : newest;
  const channel = channels.find(({ id }) => id === channelId);
  return (
    <>
      {isStopped ? (
        <StoppedPriceBar lastGood={newest?.price ?? null} at={bar} />
      ) : figures === null ? (
        <EmptyPriceBar
          price={
            line.askedPrice === null
              ? '–.––'
              : formatMinor(toMinor(line.askedPrice, currency), currency, context.locale)
          }
          per={`${whose}, ${currency},`}
          tax={priceTaxWords(channel?.taxMode ?? null, channel?.tax?.value ?? 0, formatter)}
        />
      ) : (
        <FullPriceBar {...{ figures, whose, stop }} lineId={line.id} at={bar} />
      )}
      {lines.length > 1 && <WhosePrice lines={lines} lineId={line.id} onPick={setLine} />}
      {isOutOfSight && <ScrolledPrice {...{ figures, whose }} name={input.job.name} lineId={line.id} />}
    </>
  );
}
