import type { CostedJob } from '@/lib/grid/costJob';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { present } from '@/lib/grid/present';
import type { ResolvedJob, ResolvedLine, ResolvedSize } from '@/lib/job/checkedJob';
import { fromMinor, type MinorUnits } from '@/shared/money';
import { caseEvaluator } from './caseEvaluator';
import { type BreakSpan, breakSpans, dearestQuantities } from './dearestQuantity';
import { printGroupOf } from './printGroups';
import { sizeCharges } from './sizeCharges';
import { sizePrices } from './sizePrices';

/** One cell of the price table: a piece of a size in a batch of a break. */
export interface TablePrice {
  readonly lineId: string;
  readonly size: string;
  /** First quantity of the break. */
  readonly from: number;
  /** Last quantity; null for the open break. */
  readonly to: number | null;
  /** The quantity inside the break that needs the highest price: the price is made for it, and earns least there. */
  readonly pricedAt: number;
  /** Currency units a piece, without tax, unrounded. */
  readonly fullCost: number;
  /** Price for the target margin, without tax, unrounded. */
  readonly target: number;
  /** Price the sums suggest, in minor units, tax inside or not as the channel says; never below the target. */
  readonly suggested: MinorUnits;
  /** Price that stands: the maker's own where one is typed for the break, else the suggestion. */
  readonly price: MinorUnits;
  readonly isOwn: boolean;
  /** What this size adds to the first size of its line in the same break, minor units. */
  readonly upCharge: MinorUnits;
  /** Margin, markup and pay an hour at the price that stands, for the quantity it is made for: the least inside. */
  readonly margin: number;
  readonly markup: number;
  readonly payPerHour: number;
}

/**
 * Prices every size of every line at every break of the workshop. Each target is lifted to the maker's price
 * ending once, at the very end; nothing is rounded before. An own price goes through the same grid as a suggestion.
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
  // Sizes of one blank price are one case: they are worked out once and written out for each.
  const makes = [...new Map(line.sizes.map((size) => [makeOf(size), size])).values()];
  const cells = spans.flatMap((span, index) =>
    makes.map((size) => ({ span, size, batch: dearest.get(groupOf(size))?.[index] ?? span.from })),
  );
  const unpriced = evaluate(cells.map(({ size, batch }) => ({ size, batch, askedPrice: null })));
  const placeOf = (span: number, size: ResolvedSize) =>
    span * makes.length + makes.findIndex((make) => makeOf(make) === makeOf(size));
  const prices = sizePrices(
    job,
    line,
    spans,
    spans.map((_, span) => line.sizes.map((size) => present(unpriced[placeOf(span, size)], 'target'))),
    sizeCharges(costed, line),
  );
  // One make may have several prices: a maker's own up-charge stands for a size, not for what it costs.
  const wanted = spans.flatMap((span, spanIndex) =>
    line.sizes.map((size, sizeIndex) => {
      const place = placeOf(spanIndex, size);
      const price = prices[spanIndex]?.[sizeIndex];
      if (price === undefined) throw new RangeError(`the price table has no price of ${size.size}`);
      const batch = cells[place]?.batch ?? span.from;
      return { span, size, place, batch, price, key: `${place} ${price.price}` };
    }),
  );
  const { currency } = job.workshop;
  const distinct = [...new Map(wanted.map((cell) => [cell.key, cell])).values()];
  const priced = evaluate(
    distinct.map(({ size, batch, price }) => ({
      size,
      batch,
      askedPrice: fromMinor(price.price, currency),
    })),
  );
  const columns = new Map(distinct.map(({ key }, index) => [key, priced[index]]));
  return wanted.map(({ span, size, place, batch, price, key }, index): TablePrice => {
    const first = wanted[index - (index % line.sizes.length)] ?? { price };
    return {
      lineId: line.line.id,
      size: size.size,
      from: span.from,
      to: span.to,
      pricedAt: batch,
      fullCost: present(unpriced[place], 'fullCost'),
      target: present(unpriced[place], 'target'),
      ...price,
      upCharge: (price.price - first.price.price) as MinorUnits,
      margin: present(columns.get(key), 'margin'),
      markup: present(columns.get(key), 'markup'),
      payPerHour: present(columns.get(key), 'payPerHour'),
    };
  });

  function makeOf(size: ResolvedSize): string {
    return `${groupOf(size)} ${size.blankPrice.value}`;
  }
}

/**
 * Sizes that are dearest at the same quantity. Where only the blank differs, which does not depend on the batch, one
 * looks out for all; a formula of the maker may make more of the blank at one quantity than at another.
 */
function groupBy(job: ResolvedJob, line: ResolvedLine): (size: ResolvedSize) => string {
  const formulas = job.ownRows.some(({ cost }) => cost.kind === 'formula');
  return formulas ? ({ size }) => size : (size) => printGroupOf(line, size);
}
