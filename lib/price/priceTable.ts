import { fromMinor, type MinorUnits } from '@/shared/money';
import type { ResolvedJob, ResolvedLine, ResolvedSize } from '../check/checkedJob';
import type { CostedJob } from '../grid/costJob';
import type { Grid } from '../grid/evaluateGrid';
import { present } from '../grid/present';
import { caseEvaluator } from './caseEvaluator';
import { type BreakSpan, breakSpans, dearestQuantities } from './dearestQuantity';
import { printGroupOf } from './printGroups';
import { writtenPrice } from './writtenPrice';

/** One cell of the price table: a piece of a size in a batch of a break. */
export interface TablePrice {
  readonly lineId: string;
  readonly size: string;
  /** First quantity of the break. */
  readonly from: number;
  /** Last quantity; null for the open break. */
  readonly to: number | null;
  /** The quantity inside the break that needs the highest price: the price is made for it. */
  readonly pricedAt: number;
  /** Currency units a piece, without tax, unrounded. */
  readonly fullCost: number;
  /** Price for the target margin, without tax, unrounded. */
  readonly target: number;
  /** Price to write, in minor units, tax inside or not as the channel says; never below the target. */
  readonly price: MinorUnits;
  /** What this size adds to the first size of its line in the same break, minor units. */
  readonly upCharge: MinorUnits;
  /** Margin, markup and pay an hour at the price to write, for the quantity it is made for. */
  readonly margin: number;
  readonly markup: number;
  readonly payPerHour: number;
}

/**
 * Prices every size of every line at every break of the workshop. Each target is lifted to the maker's price
 * ending once, at the very end; nothing is rounded before.
 */
export function priceTable(costed: CostedJob, grid: Grid): readonly TablePrice[] {
  const { job } = costed.laidOut;
  const spans = breakSpans(job.workshop.policy.breaks);
  return job.lines.flatMap((line) => priceLine(costed, line, spans, grid));
}

function priceLine(
  costed: CostedJob,
  line: ResolvedLine,
  spans: readonly BreakSpan[],
  grid: Grid,
): readonly TablePrice[] {
  const { job } = costed.laidOut;
  const evaluate = caseEvaluator(costed, line, grid);
  const groupOf = groupBy(job, line);
  const dearest = new Map<string, readonly number[]>();
  for (const scout of line.sizes) {
    if (dearest.has(groupOf(scout))) continue;
    dearest.set(groupOf(scout), dearestQuantities(spans, costed.laidOut, line, scout, evaluate));
  }
  const cells = spans.flatMap((span, index) =>
    line.sizes.map((size) => ({
      span,
      size,
      batch: dearest.get(groupOf(size))?.[index] ?? span.from,
    })),
  );
  const unpriced = evaluate(cells.map(({ size, batch }) => ({ size, batch, askedPrice: null })));
  const prices = unpriced.map((column) => writtenPrice(job, present(column, 'target')));
  const { currency } = job.workshop;
  const priced = evaluate(
    cells.map(({ size, batch }, index) => ({
      size,
      batch,
      askedPrice: fromMinor(prices[index] ?? (0 as MinorUnits), currency),
    })),
  );
  return cells.map(({ span, size, batch }, index): TablePrice => {
    const price = prices[index] ?? (0 as MinorUnits);
    const first = prices[index - (index % line.sizes.length)] ?? price;
    return {
      lineId: line.line.id,
      size: size.size,
      from: span.from,
      to: span.to,
      pricedAt: batch,
      fullCost: present(unpriced[index], 'fullCost'),
      target: present(unpriced[index], 'target'),
      price,
      upCharge: (price - first) as MinorUnits,
      margin: present(priced[index], 'margin'),
      markup: present(priced[index], 'markup'),
      payPerHour: present(priced[index], 'payPerHour'),
    };
  });
}

/**
 * Sizes that are dearest at the same quantity. Where only the blank differs, which does not depend on the batch, one
 * looks out for all; a formula of the maker may make more of the blank at one quantity than at another.
 */
function groupBy(job: ResolvedJob, line: ResolvedLine): (size: ResolvedSize) => string {
  const formulas = job.ownRows.some(({ cost }) => cost.kind === 'formula');
  return formulas ? ({ size }) => size : (size) => printGroupOf(line, size);
}
