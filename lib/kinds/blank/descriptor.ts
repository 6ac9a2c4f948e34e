import type { KindDescriptor } from '@/lib/stored/registry';
import { type Blank, blankSchema } from '@/shared/schemas/blank';
import { blankWithOwner, blankWithoutStock, blankWithWrap } from './migrations';
import { stockLeaving } from './stockLeaving';

export const blank: KindDescriptor<Blank, 'draft'> = {
  nature: 'draft',
  word: 'blank',
  version: 4,
  schema: blankSchema,
  steps: { 1: blankWithWrap, 2: blankWithOwner, 3: blankWithoutStock },
  partings: { 3: stockLeaving },
  linksOf: () => [],
};
