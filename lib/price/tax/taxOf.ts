import { roundDecimal } from '@/shared/decimal';
import type { MinorUnits } from '@/shared/money';

/** A sum of money with its tax apart; `without` and `tax` always add to `with`. */
export interface Taxed {
  readonly without: MinorUnits;
  readonly tax: MinorUnits;
  readonly with: MinorUnits;
}

/**
 * Tax added to a sum, half a minor unit rounding up. Taken out again by `taxInside` it is the same tax, for every
 * share up to 1 and more.
 *
 * @param without whole minor units
 * @param share 0.07 for 7 %
 */
export function taxAdded(without: MinorUnits, share: number): Taxed {
  const tax = wholeOf(without * share);
  return { without, tax, with: (without + tax) as MinorUnits };
}

/**
 * Tax that a sum has inside: sum × share ÷ (1 + share).
 *
 * @param total whole minor units, tax inside
 */
export function taxInside(total: MinorUnits, share: number): Taxed {
  const tax = wholeOf((total * share) / (1 + share));
  return { without: (total - tax) as MinorUnits, tax, with: total };
}

const wholeOf = (exact: number): MinorUnits => roundDecimal(exact, 0, 'halfUp', 12) as MinorUnits;
