import type { CheckedJob } from '@/lib/job/checkedJob';
import { piecesOfJob } from '@/lib/job/piecesOfJob';

/** @returns how many times the press is heated up for a job; each is taken for a day of its own. */
export function sessionsOf(job: CheckedJob): number {
  const most = job.job.piecesPerSession;
  return most === null ? 1 : Math.max(1, Math.ceil(piecesOfJob(job) / most));
}
