import { type Pace, paceOf } from '@/lib/calendar/pace';
import { stagesOf } from '@/lib/costing/benchWorkOf';
import { judgeJob } from '@/lib/costing/priceJob';
import { wholeJob } from '@/lib/grid/costSheet';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { planRun } from '@/lib/making/planRun';
import type { FoundWork, RunPlanned } from '@/lib/making/runPlan';
import { type Finding, isStanding } from '@/shared/finding';
import type { RunQuestion } from './runQuestion';

/** What the sums say of a run. */
export interface RunAnswer {
  readonly planned: RunPlanned;
  /** A work each, in the run's order. */
  readonly found: readonly FoundWork[];
  /** Of each job that is here, by its id. */
  readonly findings: Readonly<Record<string, readonly Finding[]>>;
  /** Good pieces of all jobs that have sums. */
  readonly pieces: number;
  /** Null where no piece is made. */
  readonly pace: Pace | null;
}

/** Costs the jobs of a run and lays them onto the clock. */
export function runAnswer({ run, works, bench, today }: RunQuestion, grid: Grid): RunAnswer {
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
  const costed = found.flatMap((one) => (one.kind === 'costed' ? [one.costed] : []));
  return {
    ...{ found, findings },
    planned: planRun({ run, found, bench, today }),
    pieces: costed.reduce((sum, { sheet }) => sum + wholeJob(sheet, 'goodPieces'), 0),
    pace: paceOf(costed.map(stagesOf)),
  };
}
