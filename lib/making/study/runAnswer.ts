import { wholeJob } from '@/lib/grid/costSheet';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { checkRun } from '@/lib/making/check/checkRun';
import { foundWorks } from '@/lib/making/foundWorks';
import { planRun } from '@/lib/making/planRun';
import type { FoundWork, RunJob, RunPace, RunPlanned } from '@/lib/making/runPlan';
import { standardOf } from '@/lib/making/standard/standardOf';
import type { Finding } from '@/shared/finding';
import type { RunStandard } from '@/shared/schemas/making/runPapers';
import type { RunQuestion } from './runQuestion';

/** What the sums say of a run. */
export interface RunAnswer {
  readonly planned: RunPlanned;
  /** A work each, in the run's order. */
  readonly found: readonly FoundWork[];
  /** What is found about the run itself. */
  readonly checks: readonly Finding[];
  /** Good pieces of all jobs that have sums. */
  readonly pieces: number;
  /** Null without a clock. */
  readonly pace: RunPace | null;
  /** What the run would be held against if it began now, under a number that is none yet; null without a clock. */
  readonly standard: RunStandard | null;
}

/** Costs the jobs of a run and lays them onto the clock. */
export function runAnswer(
  { runId, run, isBegun, works, kept, bench, today, nowMinute }: RunQuestion,
  grid: Grid,
): RunAnswer {
  const inputs = new Map(works.map(({ work, input }) => [work.jobId, input]));
  const found = foundWorks(run, (jobId) => inputs.get(jobId) ?? null, grid);
  const jobs = found.flatMap((one): readonly RunJob[] => (one.kind === 'costed' ? [one] : []));
  const planned = planRun({ run, found, bench, today, nowMinute });
  const plan = planned.kind === 'planned' ? planned.plan : null;
  return {
    ...{ found, planned },
    checks: checkRun({ runId, run, jobs, plan, isBegun, kept }),
    pieces: jobs.reduce((sum, { costed }) => sum + wholeJob(costed.sheet, 'goodPieces'), 0),
    pace: plan?.pace ?? null,
    standard: plan === null ? null : standardOf({ runId, run, jobs, plan, number: FIRST, issuedOn: today }),
  };
}

// Helpers

/** The number is given when it is issued. */
const FIRST = { count: 1, letter: null } as const;
