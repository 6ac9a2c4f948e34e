import { fromMinor, type MinorUnits } from '@/shared/money';
import type { ResolvedSize } from '../../check/checkedJob';
import type { ColumnValues } from '../../grid/evaluateGrid';
import { present } from '../../grid/present';
import type { CaseEvaluator } from '../caseEvaluator';
import { type Selling, sellingTotal } from './selling';

/** What a way of selling changes for the buyer of n pieces and for the maker. */
export interface SellingEffect {
  readonly n: number;
  /** What the buyer pays as the list stands, and after; tax as the channel writes it. */
  readonly before: MinorUnits;
  readonly after: MinorUnits;
  /** Profit as a share of the price without tax. */
  readonly marginBefore: number;
  readonly marginAfter: number;
  /** Profit on the n pieces, currency units, unrounded. */
  readonly profitBefore: number;
  readonly profitAfter: number;
}

/**
 * Puts a way of selling beside the list as it stands, at any quantities: both totals go through the grid as prices
 * of one size.
 *
 * @param currency ISO 4217 code of both
 * @param quantities whole pieces
 * @returns one effect for each quantity that both can sell
 */
export function sellingEffects(
  before: Selling,
  after: Selling,
  quantities: readonly number[],
  currency: string,
  size: ResolvedSize,
  evaluate: CaseEvaluator,
): readonly SellingEffect[] {
  const sold = quantities.flatMap((n) => {
    const totals = { before: sellingTotal(before, n), after: sellingTotal(after, n) };
    return totals.before === null || totals.after === null
      ? []
      : [{ n, before: totals.before, after: totals.after }];
  });
  const columns = evaluate(
    sold.flatMap((totals) =>
      [totals.before, totals.after].map((total) => ({
        size,
        batch: totals.n,
        askedPrice: fromMinor(total, currency) / totals.n,
      })),
    ),
  );
  return sold.map(({ n, ...totals }, index) => {
    const was = moneyOf(columns[2 * index], n);
    const is = moneyOf(columns[2 * index + 1], n);
    return {
      n,
      ...totals,
      marginBefore: was.margin,
      marginAfter: is.margin,
      profitBefore: was.profit,
      profitAfter: is.profit,
    };
  });
}

function moneyOf(
  column: ColumnValues | undefined,
  n: number,
): { readonly margin: number; readonly profit: number } {
  return { margin: present(column, 'margin'), profit: present(column, 'profit') * n };
}
