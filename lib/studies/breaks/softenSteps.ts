import type { BreakList, PriceBreak } from '@/lib/price/list/breakList';
import { fromMinor, type MinorUnits, toPriceEnding } from '@/shared/money';

/**
 * Raises the price of each break until its edge is clean: as much as n − 1 pieces cost at the price before, which
 * takes p ≥ p before × (n − 1) ÷ n. Prices are lifted to the maker's ending, never above the price before.
 *
 * @param step price ending in currency units, above 0
 * @returns a list in which no total falls; a break whose price reaches the one before stands at that price
 */
export function softenSteps(list: BreakList, step: number): BreakList {
  const [first, ...rest] = list.breaks;
  const softened: [PriceBreak, ...PriceBreak[]] = [first];
  let before = first.each;
  for (const { from, each } of rest) {
    before = soft(from, each, before, step, list.currency);
    softened.push({ from, each: before });
  }
  return { ...list, breaks: softened };
}

function soft(
  from: number,
  each: MinorUnits,
  before: MinorUnits,
  step: number,
  currency: string,
): MinorUnits {
  // Whole minor units: the least price whose n pieces cost no less than n − 1 at the price before.
  const least = Math.ceil((before * (from - 1)) / from) as MinorUnits;
  if (each >= least) return each;
  return Math.min(toPriceEnding(fromMinor(least, currency), step, currency), before) as MinorUnits;
}
