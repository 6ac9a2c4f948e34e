import type { KindDescriptor } from '@/lib/stored/registry';
import { type Workshop, workshopSchema } from '@/shared/schemas/workshop';
import { workshopWithInkRecord, workshopWithListRule, workshopWithPaper } from './migrations';

export const workshop: KindDescriptor<Workshop, 'draft'> = {
  nature: 'draft',
  word: 'workshop',
  version: 4,
  schema: workshopSchema,
  steps: { 1: workshopWithPaper, 2: workshopWithInkRecord, 3: workshopWithListRule },
  needed: 'workshop',
  linksOf: () => [],
};
