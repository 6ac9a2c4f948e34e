import type { Formatter } from '@/app/_words/formatter';
import { PRIOR_PIECES } from '@/lib/stall/plan/demand/sizeShares';
import type { SizeMix, stallAudiences } from '@/shared/schemas/sizeMix';
import type { StallForecast } from '@/shared/schemas/stallDay';

export const forecastChoices: readonly {
  readonly value: StallForecast['from'];
  readonly label: string;
}[] = [
  { value: 'typed', label: 'Pieces you type' },
  { value: 'visitors', label: 'Visitors who stop and buy' },
  { value: 'pastDays', label: 'Stall days before' },
];

export const visitorsLabel = 'Visitors a day';

/** @returns what several days make of it */
export const visitorsHint = (days: number): string | undefined =>
  days > 1 ? `On average of the ${days} days, all visitors of the place.` : undefined;

type Audience = (typeof stallAudiences)[number];

/** What the sizes of a range go by: a usual crowd, shares of one’s own, or no sizes at all. */
export type SizeMixChoice = Audience | 'typed' | 'none';

export const sizeMixChoices: readonly { readonly value: SizeMixChoice; readonly label: string }[] = [
  { value: 'none', label: 'They have one size' },
  { value: 'adults', label: 'Adults, mixed' },
  { value: 'women', label: 'Women' },
  { value: 'youth', label: 'Youth' },
  { value: 'trades', label: 'Tradespeople' },
  { value: 'runners', label: 'Runners' },
  { value: 'typed', label: 'Shares of your own' },
];

export const sizeMixChoiceOf = (mix: SizeMix | null): SizeMixChoice =>
  mix === null ? 'none' : mix.from === 'typed' ? 'typed' : mix.audience;

/** @returns what a line is called where one is chosen: “Fern shirt, of Fair shirts” */
export const designChoice = ({ line, job }: { readonly line: string; readonly job: string }): string =>
  `${line}, of ${job}`;

/** Above designs of jobs made for an order, which no stall brings. */
export const orderJobsWords = 'Made for an order, so not for a stall yet:';

/** @returns the button that makes a job stock and brings its line */
export const makeStockWords = ({ line, job }: { readonly line: string; readonly job: string }): string =>
  line === job ? `Make ${job} stock and add it` : `Make ${job} stock and add ${line}`;

/** @returns what undo calls it */
export const makeStockLabel = (job: string): string => `Make ${job} stock`;

export const ownSizesLabel = 'Leave own sales out of the sizes';
export const ownSizesHint = 'Where the next crowd is another one than yours was.';

/**
 * Whether own sales are among the sizes of a range: “Adults, mixed”, counted like 50 pieces, blended with 34 of your own.
 *
 * @param pieces that own stall days asked for
 * @returns null where there is nothing to tell
 */
export function ownSizesWords(
  mix: SizeMix | null,
  pieces: number,
  isLeftOut: boolean,
  { number }: Formatter,
): string | null {
  const orders = (mix?.ordered ?? []).reduce((sum, one) => sum + one.pieces, 0);
  if (mix === null || (!hasOwnSizes(pieces) && orders === 0)) return null;
  const name = sizeMixChoices.find(({ value }) => value === sizeMixChoiceOf(mix))?.label ?? '';
  const own = [
    ...(orders > 0 ? [`${number(orders, 0)} ordered`] : []),
    ...(hasOwnSizes(pieces) ? [`${number(pieces, 0)} sold or missed at your own stalls`] : []),
  ].join(' and ');
  return isLeftOut
    ? `“${name}” alone: ${own} are left out.`
    : `“${name}”, counted like ${number(PRIOR_PIECES, 0)} pieces, blended with ${own}.`;
}

/** Less than half a piece, of what was reckoned as lost, moves no size. */
export const hasOwnSizes = (pieces: number): boolean => pieces >= 0.5;
