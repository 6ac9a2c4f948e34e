import type { KindDescriptor } from '@/lib/stored/registry';
import { type Blank, blankSchema } from '@/shared/schemas/blank';
import { blankWithOwner, blankWithWrap } from './migrations';
import { blankWithoutStock, stockLeaves } from './stockLeaves';

export const blank: KindDescriptor<Blank, 'draft'> = {
  nature: 'draft',
  word: 'blank',
  version: 4,
  schema: blankSchema,
  steps: { 1: blankWithWrap, 2: blankWithOwner, 3: blankWithoutStock },
  partings: { 3: stockLeaves },
  linksOf: () => [],
};
