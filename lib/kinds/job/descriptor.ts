import type { KindDescriptor } from '@/lib/stored/registry';
import { type Job, jobSchema } from '@/shared/schemas/job';
import { jobLinks } from './jobLinks';
import { jobWithGang, jobWithOwnPrices } from './migrations';

export const job: KindDescriptor<Job, 'draft'> = {
  nature: 'draft',
  word: 'job',
  version: 3,
  schema: jobSchema,
  steps: { 1: jobWithGang, 2: jobWithOwnPrices },
  linksOf: jobLinks,
};
