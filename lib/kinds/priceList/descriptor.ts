import type { KindDescriptor } from '@/lib/stored/registry';
import { type PriceList, priceListSchema } from '@/shared/schemas/priceList';
import { priceListWithRules } from './migrations';
import { priceListWithoutVersions, versionsLeave } from './versionsLeave';

export const priceList: KindDescriptor<PriceList, 'draft'> = {
  nature: 'draft',
  word: 'price list',
  version: 3,
  schema: priceListSchema,
  steps: { 1: priceListWithRules, 2: priceListWithoutVersions },
  partings: { 2: versionsLeave },
  linksOf: ({ items }) =>
    items.map(({ jobId }, at) => ({ to: 'job', id: jobId, path: ['items', at, 'jobId'] })),
};
