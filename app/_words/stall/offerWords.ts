import type { Formatter } from '@/app/_words/formatter';
import { hoursWords } from '@/app/_words/minutesWords';
import type { BringRange } from '@/lib/stall/plan/bringGrid';
import type { StallAnswer, StallPlanned } from '@/lib/stall/plan/stallPlanned';
import { inSentence } from './stallPlanWords';

type Plan = Extract<StallAnswer, { kind: 'planned' }>;

/** @returns what taking the advice would bring, range by range and in all: “351.85 to expect with 81 shirts; with all 360.68” */
export function offerWords(
  { taking, advice, mine }: Plan,
  grid: readonly BringRange[],
  amount: (money: number) => string,
): string {
  const all = amount(advice.weighted.profit);
  const apart = taking.flatMap(({ rangeId, weightedProfit }) => {
    const range = grid.find((one) => one.rangeId === rangeId);
    const differs = weightedProfit !== mine.weighted.profit;
    return range === undefined || !differs
      ? []
      : [`${amount(weightedProfit)} with ${range.advised} ${inSentence(range.name)}`];
  });
  const now = `${amount(mine.weighted.profit)} to expect as it stands`;
  return apart.length < 2
    ? `${now}, ${all} with the advice`
    : `${now}; ${apart.join('; ')}; ${all} with all of it`;
}

/** @returns what a plan takes more of than there is, and what that would cause */
export function overWords(
  { limit, is, most }: StallPlanned['over'][number],
  amount: (money: number) => string,
  { formatter, locale }: { readonly formatter: Pick<Formatter, 'number'>; readonly locale: string },
): string {
  const number = (value: number) => formatter.number(value, 1);
  switch (limit) {
    case 'tablePieces':
      return `${number(is)} pieces are brought, and the table holds ${number(most)}: ${number(is - most)} stay in the box unseen. Bring fewer, or make room.`;
    case 'cash':
      return `${amount(is)} is still to be laid out before the first sale, and ${amount(most)} may be. Bring fewer, or set more aside.`;
    case 'benchHours':
      return `Making it takes ${hoursWords(is, locale)} at the bench, and you have ${hoursWords(most, locale)} until the day: the last pieces would not be ready. Bring fewer, or begin sooner.`;
    default:
      return limit satisfies never;
  }
}

/** @returns why nothing is advised though something would sell, and from what on something can come along */
export function nothingFitsWords(
  fits: NonNullable<Plan['nothingFits']>,
  amount: (money: number) => string,
  { number }: Pick<Formatter, 'number'>,
): string {
  if (fits.limit === 'tablePieces')
    return `Nothing is advised: the table holds ${number(fits.most)} and a design begins with ${number(fits.least)}. Make room, or bring what you like without the advice.`;
  // In whole units and up, so that as much is surely enough.
  return `Nothing is advised: the day and its batch alone take ${amount(fits.setAside)} that is not paid yet, and ${amount(fits.most)} may be laid out. From ${amount(Math.ceil(fits.least))} on something can come along. Set more aside, or lower the costs.`;
}

/** Less than this nobody would look for another choice. Currency units. */
const LEAST_GAP = 0.5;

/** @returns how much a better choice within the limits could earn at most; null where the advice is the best, or as good */
export const limitGapWords = (gap: number, amount: (money: number) => string): string | null =>
  gap < LEAST_GAP
    ? null
    : `Within the limits another choice could earn ${amount(gap)} more at most. The advice was not found to be the best of all.`;
