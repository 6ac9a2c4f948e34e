import type { ColumnValues, Grid } from '@/lib/grid/evaluateGrid';
import { fillJob } from '@/lib/grid/fillJob';
import { fillCase, fillLine } from '@/lib/grid/fillLine';
import type { CaseInput } from '@/lib/grid/gridInput';
import type { ResolvedLine, ResolvedSize } from '@/lib/job/checkedJob';
import type { JudgedJob } from './list/judgedJob';
import { pricedRows } from './pricedRows';

/** One piece of a size in a batch of its line that is not the one the job asks for. */
interface WantedCase {
  readonly size: ResolvedSize;
  /** Good pieces of the line, all sizes in the asked mix; other lines of the job that it is judged in stay as asked. */
  readonly batch: number;
  /** Price asked for it as typed, its share of a start in it; null leaves it at its target price. */
  readonly askedPrice: number | null;
}

export type CaseEvaluator = (wanted: readonly WantedCase[]) => readonly ColumnValues[];

/** Columns filled at once: workbooks of these two widths serve tables and curves of any length. */
const COLUMNS = 32;
const FEW_COLUMNS = 16;

/** @returns a function that puts cases of one line through the same grid as the cost sheet. */
export function caseEvaluator(judged: JudgedJob, line: ResolvedLine, grid: Grid): CaseEvaluator {
  const { job, prints } = judged.laidOut;
  const shape = { ...judged.shape, wanted: pricedRows };
  const inputs = fillLine(line, shape.placements);
  const jobColumn = fillJob(job, shape.presses);
  const toCase = ({ size, batch, askedPrice }: WantedCase): CaseInput => ({
    size: size.size,
    inputs: fillCase(
      job,
      prints,
      line,
      { ...size, askedPrice, askedStart: null },
      batch,
      0,
      shape.placements,
    ),
  });
  return (wanted) =>
    chunks(wanted, COLUMNS).flatMap((part) => {
      const cases = part.map(toCase);
      const values = grid.evaluate(
        shape,
        { job: jobColumn, lines: [{ lineId: line.line.id, inputs, cases }] },
        part.length > FEW_COLUMNS ? COLUMNS : FEW_COLUMNS,
      );
      return values.cases[0] ?? [];
    });
}

function chunks<T>(list: readonly T[], size: number): readonly (readonly T[])[] {
  return Array.from({ length: Math.ceil(list.length / size) }, (_, index) =>
    list.slice(index * size, (index + 1) * size),
  );
}
