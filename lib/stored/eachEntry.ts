import { isPlainObject } from '@/lib/merging/sameValue';

/** Takes every entry of a list through a step; what is no list, or no entry, stays as it was found. */
export const eachEntry = (
  list: unknown,
  step: (entry: Readonly<Record<string, unknown>>) => Readonly<Record<string, unknown>>,
): unknown =>
  Array.isArray(list) ? list.map((entry) => (isPlainObject(entry) ? step(entry) : entry)) : list;
