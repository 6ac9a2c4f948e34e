import { piecesOf } from '@/lib/grid/fillLine';
import { present } from '@/lib/grid/present';
import type { ResolvedJob, ResolvedLine, ResolvedSize } from '@/lib/job/checkedJob';
import { printOfSize } from '@/lib/job/printOfSize';
import { groupAt } from '@/lib/layout/groupAt';
import type { LaidOutJob, LaidOutPrint } from '@/lib/layout/layOutJob';
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
 * The quantity inside each break that needs the highest price for the target margin: its first, or one at which
 * another sheet or session is begun. Between those, more pieces only share the same amounts.
 *
 * The open break is searched to twice its start. What the line takes as a whole is never more than what two parts of
 * it take, so that of n pieces one half or the other asks for as much a piece. Sessions alone are filled by the other
 * lines too: with them, the search goes to twice the pieces of the whole job.
 *
 * @returns one quantity for each span
 */
export function dearestQuantities(
  spans: readonly BreakSpan[],
  laidOut: LaidOutJob,
  line: ResolvedLine,
  size: ResolvedSize,
  evaluate: CaseEvaluator,
): readonly number[] {
  const { job } = laidOut;
  const begins = beginnings(laidOut, line, size);
  // A formula of the maker may jump anywhere.
  const jumps = job.ownRows.some(({ cost }) => cost.kind === 'formula');
  const shared = job.job.piecesPerSession === null ? 0 : otherPieces(job, line);
  const quantities = spans.map(({ from, to }) => {
    const inside = range(from, to ?? 2 * from).filter(
      (quantity) => quantity === from || jumps || begins(quantity),
    );
    return to === null && shared > 0
      ? [...inside, ...range(2 * from + 1, 2 * (from + shared)).filter(begins)]
      : inside;
  });
  const columns = evaluate(quantities.flat().map((batch) => ({ size, batch, askedPrice: null })));
  let start = 0;
  return quantities.map((span) => {
    const targets = columns.slice(start, start + span.length).map((column) => present(column, 'target'));
    start += span.length;
    return span[targets.indexOf(Math.max(...targets))] ?? 1;
  });
}

/** @returns whether a sheet or a session is begun at a quantity. */
function beginnings({ job, prints }: LaidOutJob, line: ResolvedLine, size: ResolvedSize) {
  const pieces = piecesOf(line);
  const shared = line.placements.flatMap(({ placement }) =>
    prints.filter(
      (print) =>
        print.lineId === line.line.id &&
        print.placementId === placement.id &&
        print.print === printOfSize(placement, size.size),
    ),
  );
  const sheetsAt = (print: LaidOutPrint, quantity: number) =>
    Math.ceil(groupAt(print, quantity, pieces) / print.perSheet - 1e-9);
  // One print to a sheet for every piece is no step: each piece simply brings its sheet.
  const stepped = shared.filter((print) => print.perSheet > 1 || print.pieces !== pieces);
  const others = otherPieces(job, line);
  return (quantity: number): boolean =>
    stepped.some((print) => sheetsAt(print, quantity) > sheetsAt(print, quantity - 1)) ||
    sessionsAt(job, others + quantity) > sessionsAt(job, others + quantity - 1);
}

const range = (from: number, to: number): readonly number[] =>
  Array.from({ length: Math.max(0, to - from + 1) }, (_, step) => from + step);

const otherPieces = (job: ResolvedJob, line: ResolvedLine): number =>
  job.lines.reduce((sum, other) => sum + (other === line ? 0 : piecesOf(other)), 0);

const sessionsAt = ({ job }: ResolvedJob, quantity: number): number =>
  job.piecesPerSession === null ? 1 : Math.ceil(quantity / job.piecesPerSession);
