import { namedInput } from '@/app/_documents/namedInput';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { RunQuestion } from '@/lib/making/study/runQuestion';
import type { Run } from '@/shared/schemas/making/run';
import type { JobInput } from '@/shared/schemas/request';

/** Which run is asked for. */
interface AskedRun {
  readonly runId: string;
  readonly run: Run;
  readonly isBegun: boolean;
  /** What of the stock is kept for other work; nothing while nobody knows. */
  readonly kept?: RunQuestion['kept'];
}

type WorkDocuments = Pick<
  ReadyWorkspace,
  'workshop' | 'blanks' | 'artworks' | 'jobs' | 'onHand' | 'approvedVersions'
>;

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
  const { workshop } = workspace;
  return {
    ...{ runId, run, isBegun, kept },
    today,
    bench: { blocks: workshop.blocks, daysOff: workshop.daysOff },
    works: run.works.map((work) => ({ work, input: workInput(workspace, work.jobId, today) })),
  };
}

/**
 * Everything a job of a run is reckoned from.
 *
 * @param today YYYY-MM-DD
 * @returns null where the job is not on this device
 */
export function workInput(workspace: WorkDocuments, jobId: string, today: string): JobInput | null {
  const { workshop, blanks, artworks, jobs, onHand, approvedVersions } = workspace;
  const job = jobs.find(({ id }) => id === jobId)?.job;
  if (job === undefined) return null;
  return namedInput({ asOf: today, workshop, blanks, artworks, onHand, approvedVersions, job });
}
