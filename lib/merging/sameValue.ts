/** An object written as `{…}`, as JSON has them. */
export type PlainObject = Readonly<Record<string, unknown>>;

/** @returns whether the value is an object as JSON has them, and no list. */
export function isPlainObject(value: unknown): value is PlainObject {
  if (typeof value !== 'object' || value === null) return false;
  const prototype: unknown = Object.getPrototypeOf(value);
  return prototype === Object.prototype || prototype === null;
}

/** @returns whether two JSON values say the same: neither the order of an object's keys nor the sign of 0 says anything. */
export function sameValue(one: unknown, other: unknown): boolean {
  if (one === other || Object.is(one, other)) return true;
  if (Array.isArray(one) && Array.isArray(other)) {
    return one.length === other.length && one.every((item, index) => sameValue(item, other[index]));
  }
  if (!isPlainObject(one) || !isPlainObject(other)) return false;
  const keys = Object.keys(one);
  return (
    keys.length === Object.keys(other).length &&
    keys.every((key) => Object.hasOwn(other, key) && sameValue(one[key], other[key]))
  );
}
