import { type Selling, sellingTotal } from '@/lib/price/list/selling';
import { fromMinor, type MinorUnits } from '@/shared/money';

/** A next piece that brings in less than it costs to make. */
export interface ThinStep {
  /** The piece that follows n − 1 others. */
  readonly n: number;
  /** What the buyer pays for it, may be 0 or less. */
  readonly paid: MinorUnits;
  /** A cap gives the pieces before a break away so that no smaller order pays more. */
  readonly onPurpose: boolean;
}

/**
 * The pieces whose own price does not cover what they cause: its variable cost over what fees leave of a price.
 *
 * @param floor variable cost of the next piece ÷ (1 − fees), currency units, tax as the channel writes it
 * @param upTo the largest quantity looked at
 */
export function thinSteps(
  selling: Selling,
  floor: number,
  upTo: number,
  currency: string,
): readonly ThinStep[] {
  return Array.from({ length: Math.max(0, upTo - 1) }, (_, index) => index + 2).flatMap(
    (n): readonly ThinStep[] => {
      const before = sellingTotal(selling, n - 1);
      const total = sellingTotal(selling, n);
      if (before === null || total === null) return [];
      const paid = (total - before) as MinorUnits;
      if (fromMinor(paid, currency) >= floor) return [];
      return [{ n, paid, onPurpose: selling.kind === 'capped' }];
    },
  );
}
