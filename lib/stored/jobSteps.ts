import { isPlainObject } from './sameValue';

/** Version 1 to 2: whether prints share sheets; until then each was laid out by itself. */
export const jobWithGang = (body: unknown): unknown =>
  isPlainObject(body) ? { ...body, gang: 'apart' } : body;
