import type { KindDescriptor } from '@/lib/stored/registry';
import { type Job, jobSchema } from '@/shared/schemas/job';
import { jobLinks } from './jobLinks';
import { jobWithGang, jobWithListRule, jobWithOwnPrices } from './migrations';

export const job: KindDescriptor<Job, 'draft'> = {
  nature: 'draft',
  word: 'job',
  version: 4,
  schema: jobSchema,
  steps: { 1: jobWithGang, 2: jobWithOwnPrices, 3: jobWithListRule },
  linksOf: jobLinks,
};
