import { piecesOf } from '@/lib/grid/fillLine';
import type { ResolvedLine } from '@/lib/job/checkedJob';
import { lineRule } from '@/lib/job/lineRule';
import type { LaidOutJob } from '@/lib/layout/layOutJob';
import { type MinorUnits, toMinor, toPriceEnding } from '@/shared/money';
import { apartList } from './apartList';
import { type BreakSpan, lineSpans, openUpTo } from './breakStarts';
import type { LineList } from './lineList';
import type { LineNeeds } from './lineNeeds';
import { leastMargin, type OrderRange, overcharge } from './listFigures';
import { sizeMores } from './sizeMores';

/** A list with what the sums suggest beside what stands. */
export interface ListedLine {
  readonly list: LineList;
  /** The same without the maker's own prices. */
  readonly suggested: LineList;
  /** One for each break of either. */
  readonly spans: readonly BreakSpan[];
  /** Whether the maker has a price of their own for it. */
  readonly isOwn: readonly boolean[];
  /** Orders that the list is answered for; of one price the batch as it is made. */
  readonly orders: OrderRange;
}

/**
 * The list of a line: its rule, its breaks, one price a break for the base size, and one charge a size. Each break is
 * priced at the target of its dearest order and lifted to the ending once; nothing is rounded before.
 */
export function listLine(laidOut: LaidOutJob, line: ResolvedLine, needs: LineNeeds): ListedLine {
  const { job } = laidOut;
  const { currency, policy } = job.workshop;
  const rule = lineRule(job, line);
  const spans = lineSpans(laidOut, line, rule, needs);
  const first = spans[0]?.from ?? 1;
  const last = spans.at(-1)?.from ?? 1;
  const batch = piecesOf(line);
  const orders: OrderRange =
    rule === 'onePrice'
      ? { from: batch, to: batch }
      : { from: first, to: Math.max(policy.chosenBreaks.judgedTo, last) };
  const lifted = (amount: number) => toPriceEnding(amount, policy.priceStep, currency);
  const apart = rule === 'setUpApart' ? apartList(job, needs, orders) : null;
  const start = apart?.start ?? (0 as MinorUnits);
  const suggestions = spans.map((span): MinorUnits => {
    if (apart !== null) return apart.each;
    return lifted(rule === 'onePrice' ? needs.judged.written(batch) : dearest(needs, span));
  });
  const owns = spans.map(({ from }) =>
    rule === 'setUpApart' ? undefined : line.line.ownPrices.find((own) => own.from === from),
  );
  const hasOwn = owns.some((own) => own !== undefined);
  const mores = sizeMores(job, line, needs, orders, hasOwn);
  const listOf = (
    eachOf: (suggestion: MinorUnits, index: number) => number,
    sizes: LineList['sizes'],
  ): LineList => {
    const list = {
      lineId: line.line.id,
      rule,
      start,
      sizes,
      breaks: spans.map(({ from }, index) => {
        const each = eachOf(suggestions[index] ?? (0 as MinorUnits), index) as MinorUnits;
        return { from, each, total: (start + from * each) as MinorUnits };
      }),
    };
    return {
      ...list,
      largestOvercharge:
        rule === 'onePrice' || rule === 'setUpApart' ? null : overcharge(list, needs, orders, currency),
      leastMargin: leastMargin(list, line, needs, orders, currency),
    };
  };
  const suggested = listOf((each) => each, mores.suggested);
  const list = hasOwn
    ? listOf((each, index) => {
        const own = owns[index];
        return own === undefined ? each : toMinor(own.each, currency) + mores.ownBase;
      }, mores.standing)
    : suggested;
  return { list, suggested, spans, isOwn: owns.map((own) => own !== undefined), orders };
}

// Helpers

function dearest({ judged }: LineNeeds, { from, to }: BreakSpan): number {
  let most = 0;
  const last = to ?? openUpTo(from);
  for (let n = from; n <= last; n += 1) most = Math.max(most, judged.written(n));
  return most;
}
