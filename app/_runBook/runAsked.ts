import type { PlanningMoment } from '@/app/_clock/usePlanningMoment';
import { namedInput } from '@/app/_documents/namedInput';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { RunQuestion } from '@/lib/making/study/runQuestion';
import type { Run, RunWork } from '@/shared/schemas/making/run';
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

/** When it is planned, and for when. */
interface AskedFor extends PlanningMoment {
  /** The day to keep for a work of it, YYYY-MM-DD; null where nobody waits. */
  readonly dayOf: (work: RunWork) => string | null;
}

/** Everything a run is planned from; each job is asked with the day on which this work of it is wanted. */
export function runAsked(
  workspace: ReadyWorkspace,
  { runId, run, isBegun, kept = [] }: AskedRun,
  { today, nowMinute, dayOf }: AskedFor,
): RunQuestion {
  const { workshop } = workspace;
  return {
    ...{ runId, run, isBegun, kept },
    ...{ today, nowMinute },
    bench: { blocks: workshop.blocks, daysOff: workshop.daysOff },
    works: run.works.map((work) => ({ work, input: workInput(workspace, work.jobId, today, dayOf(work)) })),
  };
}

/**
 * Everything a job of a run is reckoned from.
 *
 * @param today YYYY-MM-DD
 * @param wantedOn the day to keep, likewise; left out that of the job
 * @returns null where the job is not on this device
 */
export function workInput(
  workspace: WorkDocuments,
  jobId: string,
  today: string,
  wantedOn?: string | null,
): JobInput | null {
  const { workshop, blanks, artworks, jobs, onHand, approvedVersions } = workspace;
  const job = jobs.find(({ id }) => id === jobId)?.job;
  if (job === undefined) return null;
  // What is asked with the same job is the same object again.
  const dated = wantedOn === undefined || wantedOn === job.wantedOn ? job : { ...job, wantedOn };
  return namedInput({ asOf: today, workshop, blanks, artworks, onHand, approvedVersions, job: dated });
}
