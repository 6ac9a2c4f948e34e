import { type CostedJob, shapeOf } from '@/lib/grid/costJob';
import type { GridShape } from '@/lib/grid/expandRows';
import type { ResolvedLine } from '@/lib/job/checkedJob';
import { lineRule } from '@/lib/job/lineRule';
import { type LaidOutJob, layOutJob } from '@/lib/layout/layOutJob';

/** The job that the list of one of its lines is judged by. */
export interface JudgedJob {
  readonly laidOut: LaidOutJob;
  /** Rows of the whole job that no quantity and no other line moves. */
  readonly sheet: { readonly jobValues: Readonly<Record<string, number>> };
  /** That of the job as it was costed: a line by itself is worked out in the workbooks that are there. */
  readonly shape: GridShape;
}

/** What was made of a layout stands as long as it does: checks, prices and studies of one evaluation share it. */
const made = new WeakMap<LaidOutJob, Map<string, LaidOutJob>>();

/**
 * A list is for orders of its line by itself: nobody who orders by it orders the other lines too, so that it bears the
 * order, its sessions and its designs alone. What is sold at one price is made to stock with the other lines, and
 * judged with them.
 */
export function judgedJob(costed: CostedJob, line: ResolvedLine): JudgedJob {
  const { laidOut, sheet } = costed;
  const { job } = laidOut;
  const { feeShare = 0, keepShare = 1 } = sheet.jobValues;
  return {
    laidOut: job.lines.length === 1 || lineRule(job, line) === 'onePrice' ? laidOut : alone(laidOut, line),
    sheet: { jobValues: { feeShare, keepShare } },
    shape: shapeOf(job),
  };
}

// Helpers

function alone(laidOut: LaidOutJob, line: ResolvedLine): LaidOutJob {
  const { id } = line.line;
  const known = made.get(laidOut) ?? new Map<string, LaidOutJob>();
  made.set(laidOut, known);
  const found = known.get(id) ?? layOutAlone(laidOut, line);
  known.set(id, found);
  return found;
}

/** Prints that lie by themselves lie alike without the other lines; shared sheets are laid anew. */
function layOutAlone(laidOut: LaidOutJob, line: ResolvedLine): LaidOutJob {
  const job = { ...laidOut.job, lines: [line] };
  return job.job.gang === 'together'
    ? layOutJob(job)
    : { ...laidOut, job, prints: laidOut.prints.filter(({ lineId }) => lineId === line.line.id) };
}
