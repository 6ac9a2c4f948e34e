import { isPlainObject } from '@/lib/stored/sameValue';

/** Version 1 to 2: the rules of reckoning have new names. */
export const priceListWithRules = (body: unknown): unknown => (isPlainObject(body) ? { ...body } : body);
