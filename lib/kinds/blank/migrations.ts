import { isPlainObject } from '@/lib/merging/sameValue';
import { eachEntry } from '@/lib/stored/eachEntry';
import { untoldTraits } from '@/shared/schemas/blankTraits';

/** Version 1 to 2: how far around a size is; nobody was asked until then. */
export const blankWithWrap = (body: unknown): unknown =>
  isPlainObject(body) ? { ...body, sizes: eachEntry(body.sizes, (size) => ({ ...size, wrap: null })) } : body;

/** Version 2 to 3: whose the blanks are, and what is asked of their surface. */
export const blankWithOwner = (body: unknown): unknown =>
  isPlainObject(body) ? { ...body, suppliedBy: 'maker', traits: untoldTraits } : body;
