import type { KindDescriptor } from '@/lib/stored/registry';
import { type PriceList, priceListSchema } from '@/shared/schemas/priceList';

export const priceList: KindDescriptor<PriceList, 'draft'> = {
  nature: 'draft',
  word: 'price list',
  version: 1,
  schema: priceListSchema,
  steps: {},
  // Issued versions keep what they promised; only the draft follows its jobs.
  linksOf: ({ items }) =>
    items.map(({ jobId }, at) => ({ to: 'job', id: jobId, path: ['items', at, 'jobId'] })),
};
