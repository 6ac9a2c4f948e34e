import type { KindDescriptor } from '@/lib/stored/registry';
import { type Blank, blankSchema } from '@/shared/schemas/blank';
import { blankWithOwner, blankWithWrap } from './migrations';

export const blank: KindDescriptor<Blank, 'draft'> = {
  nature: 'draft',
  word: 'blank',
  version: 3,
  schema: blankSchema,
  steps: { 1: blankWithWrap, 2: blankWithOwner },
  linksOf: () => [],
};
