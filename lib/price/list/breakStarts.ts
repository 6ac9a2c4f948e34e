import type { ResolvedLine } from '@/lib/job/checkedJob';
import type { LaidOutJob } from '@/lib/layout/layOutJob';
import { toPriceEnding } from '@/shared/money';
import type { SellingRule } from '@/shared/schemas/sellingRule';
import { currencyDigits } from '@/shared/tables/currencies';
import { chooseBreaks } from './chooseBreaks';
import type { LineNeeds } from './lineNeeds';

/** Quantities from one to the one before another; the open break has no last. */
export interface BreakSpan {
  /** First quantity of the break. */
  readonly from: number;
  /** Last quantity; null for the open one. */
  readonly to: number | null;
}

/** @returns the spans of first quantities in rising order; doubled ones count once. */
export function breakSpans(starts: readonly number[]): readonly BreakSpan[] {
  const rising = [...new Set(starts)].sort((a, b) => a - b);
  return rising.map((from, index) => {
    const next = rising[index + 1];
    return { from, to: next === undefined ? null : next - 1 };
  });
}

/**
 * The last order that is looked at for the dearest of the open break: twice its first. What the line takes as a whole
 * is never more than what two parts of it take, so that of n pieces one half or the other asks for as much a piece.
 */
export const openUpTo = (from: number): number => 2 * from;

/** @returns the spans of a line's breaks: as the maker typed them for the line or the workshop, else as the sums choose. */
export function lineSpans(
  laidOut: LaidOutJob,
  line: ResolvedLine,
  rule: SellingRule,
  needs: LineNeeds,
): readonly BreakSpan[] {
  const { job } = laidOut;
  const { policy } = job.workshop;
  const typed = line.line.breaks ?? policy.breaks;
  if (rule === 'onePrice') return breakSpans([1]);
  if (rule === 'setUpApart')
    return breakSpans([typed === null ? policy.chosenBreaks.from : Math.min(...typed)]);
  return breakSpans(typed ?? chosen(laidOut, line, needs));
}

// Helpers

function chosen({ job, prints }: LaidOutJob, line: ResolvedLine, { judged }: LineNeeds): readonly number[] {
  const { currency, policy } = job.workshop;
  const { count, from, judgedTo } = policy.chosenBreaks;
  const scale = 10 ** (currencyDigits(currency) ?? 2);
  const last = Math.max(from, judgedTo);
  const each = (n: number) => judged.written(n) * scale;
  const kept = line.line.ownPrices.flatMap((own) => (own.from > from ? [own.from] : []));
  const { starts } = chooseBreaks({
    each: Array.from({ length: last + 1 }, (_, n) => (n === 0 ? 0 : each(n))),
    openEach: (start) => {
      let dearest = 0;
      const end = openUpTo(start);
      for (let n = start; n <= end; n += 1) dearest = Math.max(dearest, each(n));
      return dearest;
    },
    count,
    from,
    judgedTo,
    lifted: (amount) => toPriceEnding(amount / scale, policy.priceStep, currency),
    kept,
    oddness: oddness(
      prints.flatMap(({ lineId, perSheet }) => (lineId === line.line.id && perSheet > 1 ? [perSheet] : [])),
    ),
  });
  return [...starts, ...kept.filter((start) => start > last)];
}

/** Small orders people ask for, dozens and tens (common practice): a list that begins there is read at a glance. */
const SMALL = [1, 2, 3, 4, 5, 6, 8, 10];

/** Whole sheets are the next best; any other quantity reads like a slip of the hand. */
const oddness =
  (perSheet: readonly number[]) =>
  (n: number): number => {
    if (SMALL.includes(n) || n % 12 === 0 || n % 10 === 0) return 0;
    return n % 5 === 0 || n % 6 === 0 || perSheet.some((places) => n % places === 0) ? 1 : 3;
  };
