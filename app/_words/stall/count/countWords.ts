import { tapsSinceWords } from '@/app/_words/stall/closedWords';
import type { TapsSince } from '@/lib/stall/count/tapsSince';
import { goodsKey } from '@/lib/stall/goodsKey';
import { formatNumber } from '@/shared/formatNumber';
import { fromMinor, type MinorUnits } from '@/shared/money';
import type { StallPay } from '@/shared/schemas/stallEvents';
import type { PlannedGoods, StallPlan } from '@/shared/schemas/stallPapers';
import { currencyDigits } from '@/shared/tables/currencies';

export const payWords: Readonly<Record<StallPay, string>> = { cash: 'Cash', card: 'Card' };

/** @returns whole minor units in few signs: 2800 of USD is “28”, 2850 “28.50”; nothing is rounded. */
export function shortAmount(minor: number, currency: string, locale: string): string {
  const amount = fromMinor(minor as MinorUnits, currency);
  const digits = Number.isInteger(amount) ? 0 : (currencyDigits(currency) ?? 2);
  return formatNumber(amount, locale, { minDecimals: digits, maxDecimals: digits });
}

/** @returns what a piece is called on a tile's own words: “Otter L”, “Otter” where it has no sizes */
export function pieceName({ goods, ranges }: Pick<StallPlan, 'goods' | 'ranges'>, key: PieceKey): string {
  const found = goods.find((one) => goodsKey(one) === goodsKey(key));
  if (found === undefined) return `a piece in ${key.size}`;
  return hasSizes(ranges, found.rangeId) ? `${found.design} ${found.size}` : found.design;
}

/** @returns what is on the ticket and what the customer pays: “2 for 56”, with tax where prices are without it */
export const ticketWords = (
  { pieces, minor }: { readonly pieces: number; readonly minor: number },
  { currency, taxMode }: Pick<StallPlan, 'currency' | 'taxMode'>,
  locale: string,
): string => `${pieces} for ${shortAmount(minor, currency, locale)}${taxMode === 'added' ? ' with tax' : ''}`;

type PieceKey = Pick<PlannedGoods, 'jobId' | 'lineId' | 'size'>;

export const hasSizes = (ranges: StallPlan['ranges'], rangeId: string): boolean =>
  ranges.find(({ id }) => id === rangeId)?.hasSizes ?? true;

/**
 * @param prices of a row from left to right, whole minor units, each with its size
 * @returns “28, from 2XL 31”; each price with its sizes where they do not rise in one go
 */
export function rowPriceWords(
  prices: readonly { readonly name: string; readonly minor: number }[],
  currency: string,
  locale: string,
): string {
  const turns = prices.filter(({ minor }, at) => minor !== prices[at - 1]?.minor);
  return turns
    .map(({ name, minor }, at) => {
      const amount = shortAmount(minor, currency, locale);
      return at === 0 ? amount : `from ${name} ${amount}`;
    })
    .join(', ');
}

export const leftWords = (left: number): string =>
  left < 0 ? `${-left} more than brought` : left === 0 ? 'none left' : `${left} left`;

/**
 * Beneath the size on a tile, short enough for one line of it: “4 left”, “gone”, “−1 · asked 2”.
 *
 * @returns `over`: what went too much, where something else is to be said too; a narrow tile leaves it out
 */
export function tileMark(left: number, asked: number): { readonly over: string; readonly mark: string } {
  if (left > 0) return { over: '', mark: leftWords(left) };
  const over = left < 0 ? `−${-left}` : '';
  return asked === 0
    ? { over: '', mark: over || 'gone' }
    : { over: over && `${over} · `, mark: `asked ${asked}` };
}

/** @returns the same of goods that the plan does not name: “2 out” */
export const besideMark = (left: number): string => (left > 0 ? leftWords(left) : `${-left} out`);

/** Over the goods that only a former plan names. */
export const besideWords = 'Not in the plan';

/** @returns how many went of goods that the plan does not name, unless more were put out than went */
export const besideLeftWords = (left: number): string => (left > 0 ? leftWords(left) : `${-left} out so far`);

/** After a tap on a gone tile, which counts as asked for: it can be a sale even so. */
export const goneAskedWords = {
  sold: 'Sold one all the same',
  of: (name: string, price: string): string => `${name}, ${price}`,
  why: ': none left, so it counts as asked for',
} as const;

/** @returns all that a tile says to who cannot see it */
export function tileSpoken(
  name: string,
  { left, asked, price }: { readonly left: number; readonly asked: number; readonly price: string },
): string {
  return left > 0
    ? `${name}, ${price}, ${leftWords(left)}`
    : `${name}, ${leftWords(left)}: count as asked for${asked > 0 ? `, so far ${asked}` : ''}`;
}

/** @returns how the day is kept, at the end of the head */
export const keptWords = (at: string): string => `no signal needed · kept ${at}`;

export const keepingWords = 'no signal needed · keeping…';

/** What the screen says before anything was tapped by. */
export const noPlanWords = {
  title: 'No plan is fixed yet',
  line: 'The count goes by the plan: what is in the car, and its prices. Fix the plan of this stall day first, or bring it in on this phone as a file.',
  link: 'To the plan',
} as const;

export const notKeptWords =
  'The last taps are on this screen only. Leave it open, and make room or save them as a file.';

/**
 * @param taps that came since the close; below 0 so many were taken back
 * @returns what the count of a closed day says before anybody sells by it
 */
export const closedDayWords = (since: TapsSince): string =>
  `This day is closed. ${since === 0 ? 'A sale tapped now still counts, but comes after the close: the day then has to be closed again.' : tapsSinceWords(since)}`;

/** Before what a clock says that stands before what was noted. */
export const clockBackWords = 'The clock was set back.';

/** What a clock on another day means: in one line, and whole. */
export const clockElsewhereWords = {
  short: 'The clock says another day than the plan.',
  whole: (clockDay: string, planDays: string): string =>
    `The clock of this device says ${clockDay}, and the plan is for ${planDays}. Sales are kept and counted all the same, but at wrong hours: set the clock right.`,
} as const;

/** A plan that came after counting had begun. */
export const laterPlanWords = {
  short: 'A newer plan came.',
  whole: (taps: number): string =>
    `A newer plan came after you began: what is left and prices go by it now. ${taps === 1 ? 'One tap' : `${taps} taps`} by the plan before still count${taps === 1 ? 's' : ''}.`,
} as const;

/** What two plans of two devices mean. */
export const plansOfSeveralWords = {
  short: 'Two plans are fixed for this day.',
  whole:
    'Two devices fixed a plan for this day. The count goes by the newest: take the other back in the plan, or both phones may sell by other prices.',
} as const;

export const foreignWords = (sums: readonly string[]): string =>
  `Not added to what was taken, for it is another currency: ${sums.join(', ')}.`;

/** Many pieces, and no customer went yet. */
export const ticketOfManyWords =
  'All sales so far are on one ticket, so pairs, coins and card fees cannot be told by customer. Tap Next customer when one goes.';

/** @returns that some amounts cannot be true, in the count and in the evening */
export const setAsideWords = (taps: number): string =>
  `${taps === 1 ? 'One tap is' : `${taps} taps are`} of so much money that no sum would be right with ${taps === 1 ? 'it: its' : 'them: their'} pieces count, ${taps === 1 ? 'its' : 'their'} money does not. Undo ${taps === 1 ? 'it' : 'them'} where ${taps === 1 ? 'it was' : 'they were'} tapped and type what was paid.`;

export const unplannedWords = (pieces: number): string =>
  `${pieces === 1 ? 'One piece' : `${pieces} pieces`} sold that this plan does not name.`;

export const lastHourWords = 'Prices of the last hour hold.';
