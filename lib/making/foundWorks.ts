import { judgeJob } from '@/lib/costing/priceJob';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { isStanding } from '@/shared/finding';
import type { Run } from '@/shared/schemas/making/run';
import type { JobInput } from '@/shared/schemas/request';
import type { FoundWork } from './runPlan';

/**
 * The jobs of a run with their sums. The day on which they are wanted is left out of the judgement: what cannot be
 * promised any more, for blanks would come too late, can still be made, and no sum goes by that day.
 *
 * @param inputOf the documents of a job; null where it is not here
 * @param grid the thread's formula grid
 */
export const foundWorks = (
  { works }: Pick<Run, 'works'>,
  inputOf: (jobId: string) => JobInput | null,
  grid: Grid,
): readonly FoundWork[] =>
  works.map((work): FoundWork => {
    const input = inputOf(work.jobId);
    if (input === null) return { kind: 'missing', work };
    const { answer, priced } = judgeJob({ ...input, job: { ...input.job, wantedOn: null } }, grid);
    return priced === null
      ? { kind: 'stopped', work, input, why: answer.findings.find(isStanding) ?? null }
      : { kind: 'costed', work, input, costed: priced.costed, findings: answer.findings };
  });
