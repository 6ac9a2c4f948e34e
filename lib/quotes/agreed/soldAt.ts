import { fromMinor, type MinorUnits, toMinor } from '@/shared/money';
import type { Line } from '@/shared/schemas/job';
import type { Writing } from './writingOf';

/** A line as it was sold, whole minor units as its paper writes prices. */
export interface SoldFor {
  readonly sizes: readonly {
    readonly size: string;
    readonly quantity: number;
    readonly each: number;
    readonly total: number;
  }[];
  readonly start: number;
  /** What stands in a line of its own beside its pieces and is of it. */
  readonly beside: number;
}

type Priced = Pick<Line, 'askedPrice' | 'askedStart' | 'upCharges'>;

/**
 * The price of a job's line by which it comes to what it was sold for: a piece has one price in a job, so where a size
 * was sold at two, or something was taken off, pieces get the whole coins below and the rest is asked once.
 *
 * @returns null where it asks just that already
 */
export function soldAt(line: Line, sold: SoldFor, { written, currency }: Writing): Priced | null {
  const sizes = [...new Set(sold.sizes.map(({ size }) => size))].map((size) => {
    const rows = sold.sizes.filter((one) => one.size === size && one.quantity > 0);
    const quantity = rows.reduce((sum, one) => sum + one.quantity, 0);
    const total = rows.reduce((sum, one) => sum + written(one.each as MinorUnits) * one.quantity, 0);
    const isOnePrice = new Set(rows.map(({ each }) => each)).size === 1;
    return { size, quantity, total, isOnePrice, each: quantity === 0 ? 0 : Math.floor(total / quantity) };
  });
  const wanted = sizes.filter(({ quantity }) => quantity > 0);
  const pieces = wanted.reduce((sum, { quantity }) => sum + quantity, 0);
  if (pieces === 0) return null;
  const apart = written(sold.start as MinorUnits);
  const sum = wanted.reduce((all, { total }) => all + total, 0) + written(sold.beside as MinorUnits);
  const own = upChargesOf(line, wanted, currency);
  const above = (size: string) => own.find((one) => one.size === size)?.amount ?? 0;
  const ups = wanted.reduce((all, { size, quantity }) => all + above(size) * quantity, 0);
  const each = Math.floor((sum - ups) / pieces);
  if (each <= 0) return null;
  const start = apart + sum - ups - each * pieces;
  const asked = line.askedPrice === null ? null : toMinor(line.askedPrice, currency);
  const isSame = wanted.every(({ size }) => above(size) === chargeOf(line, size, currency));
  if (isSame && asked === each && toMinor(line.askedStart ?? 0, currency) === start) return null;
  return {
    askedPrice: fromMinor(each as MinorUnits, currency),
    askedStart: start === 0 && line.askedStart === null ? null : fromMinor(start as MinorUnits, currency),
    upCharges: isSame
      ? line.upCharges
      : [
          ...line.upCharges.filter(({ size }) => !wanted.some((one) => one.size === size)),
          ...own
            .filter(({ amount }) => amount !== 0)
            .map(({ size, amount }) => ({ size, amount: fromMinor(amount as MinorUnits, currency) })),
        ],
  };
}

// Helpers

interface UpCharge {
  readonly size: string;
  /** Whole minor units. */
  readonly amount: number;
}

/**
 * What sizes add: the line's own charges where sizes were sold by them, else what they were sold above the cheapest.
 * A size at two prices says nothing of what it adds; where all were, the line's own charges are the best that is known.
 */
function upChargesOf(
  line: Line,
  wanted: readonly {
    readonly size: string;
    readonly isOnePrice: boolean;
    readonly each: number;
  }[],
  currency: string,
): readonly UpCharge[] {
  const own = wanted.map(({ size }) => ({ size, amount: chargeOf(line, size, currency) }));
  const bare = wanted.flatMap(({ isOnePrice, each }, index) =>
    isOnePrice ? [each - (own[index]?.amount ?? 0)] : [],
  );
  if (new Set(bare).size <= 1) return own;
  const least = Math.min(...wanted.map(({ each }) => each));
  return wanted.map(({ size, each }) => ({ size, amount: each - least }));
}

const chargeOf = ({ upCharges }: Line, size: string, currency: string): number =>
  upCharges.reduce((sum, one) => sum + (one.size === size ? toMinor(one.amount, currency) : 0), 0);
