import { minuteOf } from '@/lib/calendar/minutes';
import type { RunJob } from '@/lib/making/runPlan';

/** @returns smaller for a job that is wanted sooner; the largest for one that nobody waits for */
export const wantedFirst = ({ input }: Pick<RunJob, 'input'>): number =>
  input.job.wantedOn === null ? Number.MAX_SAFE_INTEGER : minuteOf(input.job.wantedOn);
