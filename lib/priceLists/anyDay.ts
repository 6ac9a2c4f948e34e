import type { JobInput } from '@/shared/schemas/request';

/** A job as a price list offers it: for any day, so that nothing is said of the one its own order is wanted on. */
export const anyDay = (input: JobInput): JobInput => ({ ...input, job: { ...input.job, wantedOn: null } });
