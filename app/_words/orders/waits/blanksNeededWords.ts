import type { Formatter } from '@/app/_words/formatter';
import { minorMoney } from '@/app/_words/orders/minorWords';
import type { BlanksNeeded, OrderBlanks } from '@/lib/orders/bench/blanksNeeded';
import type { OrderMoney } from '@/lib/orders/money/orderMoney';
import { toMinor } from '@/shared/money';

/** @example 'White shirt: 45 to buy (S 5, M 11, L 13, XL 10, 2XL 5, 3XL 1); 37 good pieces and 8 spare' */
export function blanksNeededWords(needed: BlanksNeeded, formatter: Formatter): string {
  const { blank, pieces, take, get, sizes } = needed;
  const number = (count: number) => formatter.number(count, 0);
  const name = blank === null ? 'A blank that is not here' : blank.name;
  const isBrought = blank?.suppliedBy === 'customer';
  const bySize = sizesWords(
    sizes.map(({ size, pieces: good, get: count }) => ({ size, count: count ?? good })),
    number,
  );
  const brings = isBrought ? '; the customer brings them' : '';
  if (take === null || get === null) return `${name}: ${number(pieces)}${bySize}${brings}`;
  const what = isBrought ? '' : ' to buy';
  const count = get === 0 ? `none${what}` : `${number(get)}${what}${bySize}`;
  const spare = take - pieces > 0 ? ` and ${number(take - pieces)} spare` : '';
  const here = take - get > 0 ? `, less ${number(take - get)} that lie here` : '';
  return `${name}: ${count}; ${formatter.count(pieces, 'good piece')}${spare}${here}${brings}`;
}

/** @returns what is laid out for blanks, as the jobs reckon it; null where it is not known or nothing is bought. */
export function blanksCostWords({ cost }: Pick<OrderBlanks, 'cost'>, formatter: Formatter): string | null {
  if (cost === null) return null;
  const amount = formatter.money(cost.amount);
  return cost.withFreight
    ? `Blanks and freight come to about ${amount}.`
    : `Blanks come to about ${amount}; more with freight, which not every job tells. Type it in the job.`;
}

/** @returns the same beside the deposit that was agreed on, which need not cover it. */
export function blanksAheadWords(
  blanks: Pick<OrderBlanks, 'cost'>,
  { depositMinor, currency }: Pick<OrderMoney, 'depositMinor' | 'currency'>,
  formatter: Formatter,
  locale: string,
): { readonly sentence: string; readonly isShort: boolean } | null {
  const sentence = blanksCostWords(blanks, formatter);
  if (sentence === null || blanks.cost === null) return null;
  if (depositMinor === null || depositMinor === 0) return { sentence, isShort: false };
  const overMinor = toMinor(blanks.cost.amount, currency) - depositMinor;
  return overMinor > 0
    ? {
        sentence: `${sentence} That is ${minorMoney(overMinor, currency, locale)} more than the deposit.`,
        isShort: true,
      }
    : { sentence: `${sentence} The deposit covers that.`, isShort: false };
}

/** Shown while nobody knows how many spares the jobs take. */
export const SPARES_UNKNOWN =
  'Good pieces only: how many spares they take is not known while a job is being worked out, or has a stop.';

/** Under an amount that nobody has typed yet. */
export const reckonedHint = (withFreight: boolean): string =>
  `As the jobs reckon it, ${withFreight ? 'freight in it' : 'without freight, which no job says'}: put in what you pay, or leave it empty. What stands here is noted as money spent, too.`;

// Helpers

function sizesWords(
  sizes: readonly { readonly size: string; readonly count: number }[],
  number: (count: number) => string,
): string {
  const made = sizes.filter(({ count }) => count > 0);
  if (made.length === 0 || (made.length === 1 && made[0]?.size === '')) return '';
  return ` (${made.map(({ size, count }) => `${size} ${number(count)}`).join(', ')})`;
}
