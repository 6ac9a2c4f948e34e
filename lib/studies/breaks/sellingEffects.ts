import { UnknownFigure } from '@/lib/grid/costSheet';
import type { ResolvedSize } from '@/lib/job/checkedJob';
import type { CaseEvaluator } from '@/lib/price/caseEvaluator';
import { type Selling, sellingTotal } from '@/lib/price/list/selling';
import { type BatchPoint, batchPoint } from '@/lib/studies/curve/batchPoint';
import { fromMinor, type MinorUnits } from '@/shared/money';

/** What a way of selling changes for the buyer of n pieces and for the maker. */
export interface SellingEffect {
  readonly n: number;
  /** What the buyer pays as the list stands, and after; tax as the channel writes it. */
  readonly before: MinorUnits;
  readonly after: MinorUnits;
  /** What a piece of it comes to after, currency units, unrounded. */
  readonly each: number;
  /** Profit as a share of the price without tax. */
  readonly marginBefore: number;
  readonly marginAfter: number;
  /** Profit on the n pieces, currency units, unrounded. */
  readonly profitBefore: number;
  readonly profitAfter: number;
}

/**
 * Puts a way of selling beside the list as it stands, at any quantities: both totals go through the grid as prices
 * of the sizes that are sold alike, each with its share of the pieces.
 *
 * @param currency ISO 4217 code of both
 * @param quantities whole pieces
 * @param sizes at least one, with the pieces of each
 * @returns one effect for each quantity that both can sell
 */
export function sellingEffects(
  before: Selling,
  after: Selling,
  quantities: readonly number[],
  currency: string,
  sizes: readonly ResolvedSize[],
  evaluate: CaseEvaluator,
): readonly SellingEffect[] {
  const sold = quantities.flatMap((n) => {
    const totals = { before: sellingTotal(before, n), after: sellingTotal(after, n) };
    return totals.before === null || totals.after === null
      ? []
      : [{ n, before: totals.before, after: totals.after }];
  });
  const pieces = sizes.reduce((sum, { quantity }) => sum + quantity, 0);
  const columns = evaluate(
    sold.flatMap((totals) =>
      [totals.before, totals.after].flatMap((total) =>
        sizes.map((size) => ({
          size,
          batch: totals.n,
          askedPrice: fromMinor(total, currency) / totals.n,
        })),
      ),
    ),
  );
  const point = (n: number, place: number): BatchPoint => {
    const shares = sizes.map(({ quantity }, index) => ({
      share: quantity / pieces,
      values: columns[place * sizes.length + index] ?? {},
    }));
    const whole = batchPoint(n, shares);
    if (whole === null) throw new UnknownFigure(`the grid has no whole order of ${n}`);
    return whole;
  };
  return sold.map(({ n, ...totals }, index) => {
    const was = point(n, 2 * index);
    const is = point(n, 2 * index + 1);
    return {
      n,
      ...totals,
      each: fromMinor(totals.after, currency) / n,
      marginBefore: was.margin,
      marginAfter: is.margin,
      profitBefore: was.profit,
      profitAfter: is.profit,
    };
  });
}
