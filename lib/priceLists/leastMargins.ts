import { present } from '@/lib/grid/present';
import type { ResolvedSize } from '@/lib/job/checkedJob';
import type { CaseEvaluator } from '@/lib/price/caseEvaluator';
import { type Selling, sellingTotal } from '@/lib/price/list/selling';
import { fromMinor, type MinorUnits } from '@/shared/money';

/** A break of a list, with the quantities inside at which a price may earn least. */
interface LookedSpan {
  readonly from: number;
  readonly to: number | null;
  readonly looked: readonly number[];
}

/** A size, and how orders of it are reckoned. */
interface SoldSize {
  readonly size: ResolvedSize;
  readonly selling: Selling;
}

/** Where a break earns least. */
interface LeastMargin {
  readonly size: string;
  readonly at: number;
  /** What the buyer of that many pays, whole minor units. */
  readonly total: MinorUnits;
  /** Profit as a share of the price without tax. */
  readonly margin: number;
}

/**
 * The least margin inside each break, by the rule the pieces are sold by: under a cap the last quantities of a break
 * pay less a piece than is listed.
 *
 * @param currency ISO 4217 code
 * @returns one for each span; null where nothing of it is for sale
 */
export function leastMargins(
  spans: readonly LookedSpan[],
  sold: readonly SoldSize[],
  currency: string,
  evaluate: CaseEvaluator,
): readonly (LeastMargin | null)[] {
  const cases = spans.flatMap(({ looked }, span) =>
    [...new Set(looked)].flatMap((at) =>
      sold.flatMap(({ size, selling }) => {
        const total = sellingTotal(selling, at);
        return total === null
          ? []
          : [{ span, total, size, batch: at, askedPrice: fromMinor(total, currency) / at }];
      }),
    ),
  );
  const columns = evaluate(cases);
  const told = cases.map(({ span, size, batch, total }, index) => ({
    span,
    size: size.size,
    at: batch,
    total,
    margin: present(columns[index], 'margin'),
  }));
  return spans.map((_, index) => {
    const [least] = told.filter(({ span }) => span === index).toSorted((a, b) => a.margin - b.margin);
    return least === undefined
      ? null
      : { size: least.size, at: least.at, total: least.total, margin: least.margin };
  });
}
