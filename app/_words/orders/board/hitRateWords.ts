import type { TextContext } from '@/app/_words/formatter';
import { formatterFor } from '@/app/_words/formatter';
import { minorInRow } from '@/app/_words/orders/minorWords';
import type { hitRates } from '@/lib/orders/board/hitRates';

type HitRates = ReturnType<typeof hitRates>;
type Rate = HitRates['all'] | HitRates['byPrice'][number] | HitRates['byAnswer'][number];

/** @returns how many of the answered quotes were taken: “3 of 5, 60 %”; few are said to be few. */
export function hitRateWords({ decided, won, share, isFew }: Rate, context: TextContext): string {
  const formatter = formatterFor(context);
  if (share === null) return 'none answered';
  const counted = `${formatter.number(won)} of ${formatter.number(decided)}`;
  return isFew ? `${counted}, too few to tell` : `${counted}, ${formatter.share(share)}`;
}

export function priceBandWords(
  { fromMinor, belowMinor }: HitRates['byPrice'][number]['band'],
  currency: string,
  context: TextContext,
): string {
  const said = (minor: number) => minorInRow(minor, currency, context);
  if (belowMinor === null) return fromMinor === 0 ? 'any' : `${said(fromMinor)} and more`;
  return fromMinor === 0 ? `under ${said(belowMinor)}` : `${said(fromMinor)} to under ${said(belowMinor)}`;
}

export function answerBandWords({ fromDays, toDays }: HitRates['byAnswer'][number]['band']): string {
  if (toDays === 0) return 'the same day';
  if (toDays === null) return `after ${fromDays} days or more`;
  if (toDays === fromDays) return fromDays === 1 ? 'the next day' : `after ${fromDays} days`;
  return `after ${fromDays} to ${toDays} days`;
}
