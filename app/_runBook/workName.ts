import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { goneName, goneNames } from '@/app/_words/making/goneNames';
import type { RunFacts } from '@/lib/making/runFacts';

/** @returns what a job of a run is called; one that is not here any more, as it was when the run began */
export function workName(
  jobs: ReadyWorkspace['jobs'],
  { standard }: Pick<RunFacts, 'standard'>,
  jobId: string,
): string {
  const here = jobs.find(({ id }) => id === jobId)?.job.name;
  if (here !== undefined) return here;
  const frozen = standard?.body.works.find((work) => work.jobId === jobId)?.name;
  return frozen === undefined ? goneNames.job : goneName(frozen);
}
