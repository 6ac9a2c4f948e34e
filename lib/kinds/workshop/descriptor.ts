import type { KindDescriptor } from '@/lib/stored/registry';
import { type Workshop, workshopSchema } from '@/shared/schemas/workshop';
import { workshopWithInkRecord, workshopWithPaper } from './migrations';

export const workshop: KindDescriptor<Workshop, 'draft'> = {
  nature: 'draft',
  word: 'workshop',
  version: 3,
  schema: workshopSchema,
  steps: { 1: workshopWithPaper, 2: workshopWithInkRecord },
  needed: 'workshop',
  linksOf: () => [],
};
