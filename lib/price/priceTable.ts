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
  // Sizes of one blank price are one case: they are worked out once and written out for each.
  const makes = [...new Map(line.sizes.map((size) => [makeOf(size), size])).values()];
  const cells = spans.flatMap((span, index) =>
    makes.map((size) => ({ span, size, batch: dearest.get(groupOf(size))?.[index] ?? span.from })),
  );
  const unpriced = evaluate(cells.map(({ size, batch }) => ({ size, batch, askedPrice: null })));
  const prices = unpriced.map((column) => writtenPrice(job, present(column, 'target')));
  const { currency } = job.workshop;
  const priced = evaluate(
    cells.map(({ size, batch }, index) => ({
      size,
      batch,
      askedPrice: fromMinor(priceAt(prices, index), currency),
    })),
  );
  return spans.flatMap((span, spanIndex) => {
    const placeOf = (size: ResolvedSize) =>
      spanIndex * makes.length + makes.findIndex((make) => makeOf(make) === makeOf(size));
    const [firstSize] = line.sizes;
    if (firstSize === undefined) return [];
    const first = priceAt(prices, placeOf(firstSize));
    return line.sizes.map((size): TablePrice => {
      const place = placeOf(size);
      const price = priceAt(prices, place);
      return {
        lineId: line.line.id,
        size: size.size,
        from: span.from,
        to: span.to,
        pricedAt: cells[place]?.batch ?? span.from,
        fullCost: present(unpriced[place], 'fullCost'),
        target: present(unpriced[place], 'target'),
        price,
        upCharge: (price - first) as MinorUnits,
        margin: present(priced[place], 'margin'),
        markup: present(priced[place], 'markup'),
        payPerHour: present(priced[place], 'payPerHour'),
      };
    });
  });

  function makeOf(size: ResolvedSize): string {
    return `${groupOf(size)} ${size.blankPrice.value}`;
  }
}

function priceAt(prices: readonly MinorUnits[], place: number): MinorUnits {
  const price = prices[place];
  if (price === undefined) throw new RangeError(`the price table has no price at ${place}`);
  return price;
}

/**
 * Sizes that are dearest at the same quantity. Where only the blank differs, which does not depend on the batch, one
 * looks out for all; a formula of the maker may make more of the blank at one quantity than at another.
 */
function groupBy(job: ResolvedJob, line: ResolvedLine): (size: ResolvedSize) => string {
  const formulas = job.ownRows.some(({ cost }) => cost.kind === 'formula');
  return formulas ? ({ size }) => size : (size) => printGroupOf(line, size);
}
