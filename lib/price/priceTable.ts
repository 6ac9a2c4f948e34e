import type { CostedJob } from '@/lib/grid/costJob';
import type { ColumnValues, Grid } from '@/lib/grid/evaluateGrid';
import { piecesOf } from '@/lib/grid/fillLine';
import { present } from '@/lib/grid/present';
import type { ResolvedJob, ResolvedLine, ResolvedSize } from '@/lib/job/checkedJob';
import { fromMinor, type MinorUnits } from '@/shared/money';
import { caseEvaluator } from './caseEvaluator';
import { type BreakSpan, openUpTo } from './list/breakStarts';
import { judgedJob } from './list/judgedJob';
import type { LineList } from './list/lineList';
import { type LineNeeds, lineNeeds } from './list/lineNeeds';
import { type ListedLine, listLine } from './list/listLine';
import { printGroupOf } from './printGroups';
import { type SuggestedPrice, suggestedPrice } from './suggestedPrice';

/** One cell of the price table: a piece of a size in a batch of a break; of a list for orders, of this line alone. */
export interface TablePrice {
  readonly lineId: string;
  readonly size: string;
  /** First quantity of the break. */
  readonly from: number;
  /** Last quantity; null for the open break. */
  readonly to: number | null;
  /** The quantity inside the break that needs the highest price: the price earns least there. Of one price, the batch. */
  readonly pricedAt: number;
  /** Currency units a piece, without tax, unrounded. */
  readonly fullCost: number;
  /** Price for the target margin, without tax, unrounded; where set-up is apart, beside its share of the start. */
  readonly target: number;
  /** Price the sums suggest, in minor units, tax inside or not as the channel says; never below the target. */
  readonly suggested: MinorUnits;
  /** Price that stands: the maker's own where one is typed for the break, else the suggestion. */
  readonly price: MinorUnits;
  readonly isOwn: boolean;
  /** What every order of the list pays once on top of its pieces, minor units; 0 but for set-up apart. */
  readonly start: MinorUnits;
  /** What this size adds to the base size of its line, minor units: the same in every break. */
  readonly upCharge: MinorUnits;
  /** Margin, markup and pay an hour at the price that stands, for the quantity it is made for: the least inside. */
  readonly margin: number;
  readonly markup: number;
  readonly payPerHour: number;
}

interface PricedLines {
  readonly table: readonly TablePrice[];
  readonly lists: readonly LineList[];
  /** What is asked for the pieces of each line where nobody has decided it. */
  readonly suggested: readonly SuggestedPrice[];
}

/** A line with its list and what it was made from. */
export interface PricedLine extends ListedLine {
  readonly needs: LineNeeds;
  readonly table: readonly TablePrice[];
}

/** @returns the cells of the lists of all lines. */
export const priceTable = (costed: CostedJob, grid: Grid): readonly TablePrice[] =>
  priceLines(costed, grid).table;

/**
 * Lists of every line, and each of their prices as a case of the grid: what a piece costs, must bring and leaves where
 * it earns least. An own price goes through the same grid as a suggestion.
 */
export function priceLines(costed: CostedJob, grid: Grid): PricedLines {
  const priced = costed.laidOut.job.lines.map((line) => priceLine(costed, line, grid));
  const { job } = costed.laidOut;
  return {
    table: priced.flatMap(({ table }) => table),
    lists: priced.map(({ list }) => list),
    suggested: job.lines.flatMap((line, index) => {
      const own = priced[index];
      return own === undefined ? [] : [suggestedPrice(job, own, piecesOf(line))];
    }),
  };
}

/** The same for one line, judged by the job that its orders are. */
export function priceLine(costed: CostedJob, line: ResolvedLine, grid: Grid): PricedLine {
  const judged = judgedJob(costed, line);
  const { job } = judged.laidOut;
  const evaluate = caseEvaluator(judged, line, grid);
  const needs = lineNeeds(judged, line, grid, evaluate);
  if (needs === null) throw new RangeError(`line ${line.line.id} has no pieces to price`);
  const listed = listLine(judged.laidOut, line, needs);
  const { currency } = job.workshop;
  const cells = listed.spans.flatMap((span, index) =>
    line.sizes.map((size, at) => ({
      ...priceOf(listed, index, at),
      span,
      size,
      batch: dearestOrder(needs, listed, span, at),
    })),
  );
  // Cases of one make, batch and price are worked out once and written out for each.
  const keyOf = ({ size, batch, price }: (typeof cells)[number]) =>
    `${makeOf(job, line, size)} ${batch} ${price}`;
  const distinct = [...new Map(cells.map((cell) => [keyOf(cell), cell])).values()];
  const priced = evaluate(
    distinct.map(({ size, batch, price }) => ({
      size,
      batch,
      askedPrice: fromMinor(price, currency) + fromMinor(listed.list.start, currency) / batch,
    })),
  );
  const columns = new Map(distinct.map((cell, index) => [keyOf(cell), priced[index]]));
  const table = cells.map(({ span, size, batch, ...cell }): TablePrice => {
    const column: ColumnValues | undefined = columns.get(keyOf({ span, size, batch, ...cell }));
    return {
      lineId: line.line.id,
      size: size.size,
      from: span.from,
      to: span.to,
      pricedAt: batch,
      fullCost: present(column, 'fullCost'),
      target: present(column, 'target') - fromMinor(listed.list.start, currency) / batch / needs.taxFactor,
      start: listed.list.start,
      ...cell,
      margin: present(column, 'margin'),
      markup: present(column, 'markup'),
      payPerHour: present(column, 'payPerHour'),
    };
  });
  return { ...listed, needs, table };
}

// Helpers

function priceOf({ list, suggested, isOwn }: ListedLine, span: number, size: number) {
  const upCharge = list.sizes[size]?.more ?? (0 as MinorUnits);
  const asked = ((suggested.breaks[span]?.each ?? 0) + (suggested.sizes[size]?.more ?? 0)) as MinorUnits;
  const price = ((list.breaks[span]?.each ?? 0) + upCharge) as MinorUnits;
  return { suggested: asked, price, isOwn: isOwn[span] === true || price !== asked, upCharge };
}

/** The order inside a break in which a size needs most; where set-up is apart, the one that leaves least. */
function dearestOrder(
  { sizes }: LineNeeds,
  { list, orders }: ListedLine,
  { from, to }: BreakSpan,
  size: number,
): number {
  if (list.rule === 'onePrice') return orders.from;
  const target = sizes[size]?.target ?? (() => 0);
  const isApart = list.rule === 'setUpApart';
  const each = (list.breaks[0]?.each ?? 0) + (list.sizes[size]?.more ?? 0);
  const last = to ?? (isApart ? orders.to : openUpTo(from));
  let [dearest, most] = [from, Number.NEGATIVE_INFINITY];
  for (let n = from; n <= last; n += 1) {
    const needed = isApart ? (target(n) * n) / (list.start + each * n) : target(n);
    if (needed > most * (1 + 1e-12)) [dearest, most] = [n, needed];
  }
  return dearest;
}

/** Sizes of one blank price and print are one case; a formula of the maker may tell any two apart. */
function makeOf(job: ResolvedJob, line: ResolvedLine, size: ResolvedSize): string {
  const formulas = job.ownRows.some(({ cost }) => cost.kind === 'formula');
  return formulas ? size.size : `${printGroupOf(line, size)} ${size.blankPrice.value}`;
}
