import { type MinorUnits, toMinor } from '@/shared/money';
import { failed, ok, type Result } from '@/shared/result';
import { currencyDigits } from '@/shared/tables/currencies';

declare const listed: unique symbol;

/** From so many pieces on, each costs so much. */
export interface PriceBreak {
  /** First quantity of the break. */
  readonly from: number;
  /** Price of every piece of an order that reaches it, as written, whole minor units. */
  readonly each: MinorUnits;
}

/** Breaks in rising order, each once; only `breakList` makes one. */
export interface BreakList {
  readonly [listed]: true;
  readonly currency: string;
  readonly breaks: readonly [PriceBreak, ...PriceBreak[]];
}

type BreakListProblem =
  | { readonly kind: 'unknownCurrency'; readonly currency: string }
  | { readonly kind: 'noBreaks' }
  | { readonly kind: 'notWhole'; readonly from: number }
  | { readonly kind: 'outOfOrder'; readonly from: number; readonly after: number }
  | { readonly kind: 'doubled'; readonly from: number }
  | { readonly kind: 'notAPrice'; readonly from: number; readonly each: number }
  | {
      readonly kind: 'finerThanCurrency';
      readonly from: number;
      readonly each: number;
      readonly digits: number;
    };

/**
 * Reads a price list as a maker types it. Quantities under the first break are not for sale.
 *
 * @param breaks first quantities with their prices, in currency units
 * @param currency ISO 4217 code
 * @returns the list, or the first thing that is wrong with it; nothing is sorted or rounded in silence
 */
export function breakList(
  breaks: readonly { readonly from: number; readonly each: number }[],
  currency: string,
): Result<BreakList, BreakListProblem> {
  const digits = currencyDigits(currency);
  if (digits === null) return failed({ kind: 'unknownCurrency', currency });
  const read: PriceBreak[] = [];
  for (const { from, each } of breaks) {
    if (!Number.isInteger(from) || from < 1) return failed({ kind: 'notWhole', from });
    const before = read.at(-1)?.from;
    if (before === from) return failed({ kind: 'doubled', from });
    if (before !== undefined && before > from) return failed({ kind: 'outOfOrder', from, after: before });
    if (!(each > 0 && each <= 1e9)) return failed({ kind: 'notAPrice', from, each });
    const minor = toMinor(each, currency);
    if (Math.abs(Number(`${minor}e-${digits}`) - each) > 1e-9 * each)
      return failed({ kind: 'finerThanCurrency', from, each, digits });
    read.push({ from, each: minor });
  }
  return breakListOf(read, currency);
}

/** @returns a list of breaks that are in order and in whole minor units already. */
export function breakListOf(
  breaks: readonly PriceBreak[],
  currency: string,
): Result<BreakList, { readonly kind: 'noBreaks' }> {
  const [first] = breaks;
  return first === undefined
    ? failed({ kind: 'noBreaks' })
    : ok({ currency, breaks } as unknown as BreakList);
}

/**
 * @param n whole pieces
 * @returns what n pieces cost when the price of their break holds for each of them; null under the first break
 */
export function breakTotal({ breaks }: BreakList, n: number): MinorUnits | null {
  const reached = breaks.findLast(({ from }) => from <= n);
  return reached === undefined ? null : ((n * reached.each) as MinorUnits);
}
