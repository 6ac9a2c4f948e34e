import type { ResolvedSize } from '../check/checkedJob';
import { present } from '../grid/present';
import type { CaseEvaluator } from './caseEvaluator';

export interface BreakSpan {
  /** First quantity of the break. */
  readonly from: number;
  /** Last quantity; null for the open one. */
  readonly to: number | null;
}

/** @returns the spans of rising first quantities; doubled ones count once. */
export function breakSpans(starts: readonly number[]): readonly BreakSpan[] {
  const rising = [...new Set(starts)].sort((a, b) => a - b);
  return rising.map((from, index) => {
    const next = rising[index + 1];
    return { from, to: next === undefined ? null : next - 1 };
  });
}

/**
 * The quantity inside each break that needs the highest price for the target margin: usually the first, unless
 * a sheet or a session is begun later in it. The open break is searched to twice its start: beyond, one more
 * sheet or session is spread over so many pieces that it cannot ask for more than at the start.
 *
 * @returns one quantity for each span
 */
export function dearestQuantities(
  spans: readonly BreakSpan[],
  size: ResolvedSize,
  evaluate: CaseEvaluator,
): readonly number[] {
  const quantities = spans.map(({ from, to }) => {
    const last = to ?? 2 * from;
    return Array.from({ length: last - from + 1 }, (_, step) => from + step);
  });
  const columns = evaluate(quantities.flat().map((batch) => ({ size, batch, askedPrice: null })));
  let start = 0;
  return quantities.map((span) => {
    const targets = columns.slice(start, start + span.length).map((column) => present(column, 'target'));
    start += span.length;
    return span[targets.indexOf(Math.max(...targets))] ?? 1;
  });
}
