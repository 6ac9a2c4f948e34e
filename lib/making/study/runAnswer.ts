import { judgeJob } from '@/lib/costing/priceJob';
import { wholeJob } from '@/lib/grid/costSheet';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { planRun } from '@/lib/making/planRun';
import type { FoundWork, RunJob, RunPace, RunPlanned } from '@/lib/making/runPlan';
import { standardOf } from '@/lib/making/standard/standardOf';
import { type Finding, isStanding } from '@/shared/finding';
import type { RunStandard } from '@/shared/schemas/runPapers';
import type { RunQuestion } from './runQuestion';

/** What the sums say of a run. */
export interface RunAnswer {
  readonly planned: RunPlanned;
  /** A work each, in the run's order. */
  readonly found: readonly FoundWork[];
  /** Of each job that is here, by its id. */
  readonly findings: Readonly<Record<string, readonly Finding[]>>;
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
export function runAnswer({ runId, run, works, bench, today }: RunQuestion, grid: Grid): RunAnswer {
  const findings: Record<string, readonly Finding[]> = {};
  const found = works.map(({ work, input }): FoundWork => {
    if (input === null) return { kind: 'missing', work };
    // A day that cannot be kept stops a price, but the work is still to be done.
    const { answer, priced } = judgeJob({ ...input, job: { ...input.job, wantedOn: null } }, grid);
    findings[work.jobId] = answer.findings;
    return priced === null
      ? { kind: 'stopped', work, input, why: answer.findings.find(isStanding) ?? null }
      : { kind: 'costed', work, input, costed: priced.costed };
  });
  const jobs = found.flatMap((one): readonly RunJob[] => (one.kind === 'costed' ? [one] : []));
  const planned = planRun({ run, found, bench, today });
  return {
    ...{ found, findings, planned },
    checks: [],
    pieces: jobs.reduce((sum, { costed }) => sum + wholeJob(costed.sheet, 'goodPieces'), 0),
    pace: planned.kind === 'planned' ? planned.plan.pace : null,
    standard:
      planned.kind === 'planned'
        ? standardOf({ runId, run, jobs, plan: planned.plan, number: FIRST, issuedOn: today })
        : null,
  };
}

// Helpers

/** The number is given when it is issued. */
const FIRST = { count: 1, letter: null } as const;
