import { namedInput } from '@/app/_documents/namedInput';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { RunQuestion } from '@/lib/making/study/runQuestion';
import type { Run } from '@/shared/schemas/making/run';

/** Which run is asked for. */
interface AskedRun {
  readonly runId: string;
  readonly run: Run;
  readonly isBegun: boolean;
  /** What of the stock is kept for other work; nothing while nobody knows. */
  readonly kept?: RunQuestion['kept'];
}

/**
 * Everything a run is planned from.
 *
 * @param today YYYY-MM-DD
 */
export function runAsked(
  workspace: ReadyWorkspace,
  { runId, run, isBegun, kept = [] }: AskedRun,
  today: string,
): RunQuestion {
  const { workshop, blanks, artworks, jobs, onHand, approvedVersions } = workspace;
  const byId = new Map(jobs.map(({ id, job }) => [id, job]));
  return {
    ...{ runId, run, isBegun, kept },
    today,
    bench: { blocks: workshop.blocks, daysOff: workshop.daysOff },
    works: run.works.map((work) => {
      const job = byId.get(work.jobId);
      const asked = { asOf: today, workshop, blanks, artworks, onHand, approvedVersions };
      return { work, input: job === undefined ? null : namedInput({ ...asked, job }) };
    }),
  };
}
