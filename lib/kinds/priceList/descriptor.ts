import type { KindDescriptor } from '@/lib/stored/registry';
import { type PriceList, priceListSchema } from '@/shared/schemas/priceList';
import { priceListWithRules } from './migrations';

export const priceList: KindDescriptor<PriceList, 'draft'> = {
  nature: 'draft',
  word: 'price list',
  version: 2,
  schema: priceListSchema,
  steps: { 1: priceListWithRules },
  // Issued versions keep what they promised; only the draft follows its jobs.
  linksOf: ({ items }) =>
    items.map(({ jobId }, at) => ({ to: 'job', id: jobId, path: ['items', at, 'jobId'] })),
};
