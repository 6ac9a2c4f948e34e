import type { KindDescriptor } from '@/lib/stored/registry';
import { type Workshop, workshopSchema } from '@/shared/schemas/workshop';
import { inkRecordLeaves, workshopWithoutInkRecord } from './inkRecordLeaves';
import {
  workshopWithBlackShare,
  workshopWithBlocks,
  workshopWithInkRecord,
  workshopWithListRule,
  workshopWithPaper,
} from './migrations';

export const workshop: KindDescriptor<Workshop, 'draft'> = {
  nature: 'draft',
  word: 'workshop',
  version: 7,
  schema: workshopSchema,
  steps: {
    1: workshopWithPaper,
    2: workshopWithInkRecord,
    3: workshopWithListRule,
    4: workshopWithoutInkRecord,
    5: workshopWithBlackShare,
    6: workshopWithBlocks,
  },
  partings: { 4: inkRecordLeaves },
  needed: 'workshop',
  linksOf: () => [],
};
