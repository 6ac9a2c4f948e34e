import type { ResolvedJob } from '@/lib/job/checkedJob';
import type { LaidOutJob, LaidOutPrint } from '@/lib/layout/layOutJob';
import type { CostCase, CostSheet } from './costSheet';
import type { Grid, GridFault, GridValues } from './evaluateGrid';
import type { GridShape } from './expandRows';
import { fillJob, pressesOf } from './fillJob';
import { fillCase, fillLine, piecesOf } from './fillLine';
import type { GridFilling, LineInput } from './gridInput';
import { present } from './present';

declare const costed: unique symbol;

/** A job with its sums. Only `costJob` makes one, and only from a job that was checked and laid out. */
export interface CostedJob {
  readonly [costed]: true;
  readonly laidOut: LaidOutJob;
  readonly sheet: CostSheet;
}

type CostResult =
  | { readonly kind: 'costed'; readonly job: CostedJob }
  | { readonly kind: 'faulty'; readonly faults: readonly GridFault[] };

/** @returns what decides which workbook a job is worked out in. */
export const shapeOf = (job: ResolvedJob): GridShape => ({
  placements: Math.max(...job.lines.map((line) => line.placements.length)),
  presses: pressesOf(job).length,
  ownRows: job.ownRows,
});

/**
 * Works out every cost row for every size of every line, and for the whole job.
 *
 * @returns the sums, or the cells that came out as errors
 */
export function costJob(laidOut: LaidOutJob, grid: Grid): CostResult {
  const { job, prints } = laidOut;
  const shape = shapeOf(job);
  const filling = fillingOf(job, prints, shape.placements);
  const values = grid.evaluate(shape, filling);
  if (values.faults.length > 0) return { kind: 'faulty', faults: values.faults };
  const sheet = toSheet(job, filling, values);
  return { kind: 'costed', job: { laidOut, sheet } as unknown as CostedJob };
}

/** The filling of the cost sheet itself: each size at the quantities asked. */
function fillingOf(job: ResolvedJob, prints: readonly LaidOutPrint[], slots: number): GridFilling {
  return {
    job: fillJob(job),
    lines: job.lines.map(
      (line): LineInput => ({
        lineId: line.line.id,
        inputs: fillLine(line, slots),
        cases: line.sizes.map((size) => ({
          size: size.size,
          inputs: fillCase(job, prints, line, size, piecesOf(line), size.quantity, slots),
        })),
      }),
    ),
  };
}

function toSheet(job: ResolvedJob, filling: GridFilling, values: GridValues): CostSheet {
  const columns = values.cases.flat();
  const cases = job.lines.flatMap((line, index) =>
    line.sizes.map(
      (size, at): CostCase => ({
        lineId: line.line.id,
        size: size.size,
        quantity: size.quantity,
        batch: piecesOf(line),
        incrementalCost: present(values.cases[index]?.[at], 'incrementalCost'),
      }),
    ),
  );
  return {
    currency: job.workshop.currency,
    rows: [...values.rows.job, ...values.rows.line, ...values.rows.case],
    cases,
    values: Object.fromEntries(
      values.rows.case.map((row) => [
        row.id,
        [...columns.map((column) => column[row.id] ?? null), values.whole[row.id] ?? null],
      ]),
    ),
    lineValues: Object.fromEntries(
      values.rows.line.map((row) => [row.id, values.lines.map((line) => present(line, row.id))]),
    ),
    jobValues: values.job,
    lineIds: job.lines.map((line) => line.line.id),
    inputs: {
      job: filling.job,
      lines: filling.lines.map((line) => line.inputs),
      cases: filling.lines.flatMap((line) => line.cases.map((one) => one.inputs)),
    },
    fullCost: present(values.whole, 'fullCost'),
  };
}
