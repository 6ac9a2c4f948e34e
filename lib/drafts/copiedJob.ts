import type { Job } from '@/shared/schemas/job';
import { freeName } from './freeName';

/** A job made after another, and what of that one it does not bear. */
interface CopiedJob {
  readonly job: Job;
  readonly leftOut: {
    /** The day the other was wanted; null where none was set. */
    readonly wantedOn: string | null;
    /** How many stops were passed with a reason. */
    readonly waivers: number;
  };
}

/**
 * A job to begin again from another. It is wanted on a day of its own, and no stop is passed yet: a reason was given
 * for one order, and the next customer did not agree to it.
 *
 * @param taken names of all jobs
 */
export function copiedJob(job: Job, taken: readonly string[]): CopiedJob {
  const original = job.name.replace(/^Copy of /, '');
  return {
    job: {
      ...job,
      name: freeName(`Copy of ${original}`, taken),
      state: 'draft',
      archivedOn: null,
      wantedOn: null,
      waivers: [],
    },
    leftOut: { wantedOn: job.wantedOn, waivers: job.waivers.length },
  };
}
