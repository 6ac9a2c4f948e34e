import { isPlainObject } from './sameValue';

/**
 * The same JSON value as `now`, made of the parts of `before` wherever those say the same: what did not change
 * stays the same object, and whoever compares by identity sees what did.
 */
export function keepSame(before: unknown, now: unknown): unknown {
  if (Object.is(before, now)) return before;
  if (Array.isArray(before) && Array.isArray(now)) {
    const kept = now.map((item, index) => keepSame(before[index], item));
    return before.length === kept.length && kept.every((item, index) => Object.is(item, before[index]))
      ? before
      : kept;
  }
  if (!isPlainObject(before) || !isPlainObject(now)) return now;
  const keys = Object.keys(now);
  const kept = keys.map((key) => [key, keepSame(before[key], now[key])] as const);
  const isSame =
    keys.length === Object.keys(before).length &&
    kept.every(([key, value]) => Object.hasOwn(before, key) && Object.is(value, before[key]));
  return isSame ? before : Object.fromEntries(kept);
}
