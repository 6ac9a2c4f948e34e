import { isPlainObject, sameValue } from './sameValue';

/**
 * Where one body differs from another: the way down for as long as all that differs lies beneath it.
 *
 * @returns keys and positions, as they are in both; empty where they differ in several places, or one is no object
 * @example changedPath({ a: { b: 1, c: 2 } }, { a: { b: 1, c: 3 } }) // => ['a', 'c']
 */
export function changedPath(before: unknown, after: unknown): readonly (string | number)[] {
  const path: (string | number)[] = [];
  let [one, other] = [before, after];
  for (;;) {
    const keys = differingKeys(one, other);
    const [key] = keys;
    if (key === undefined || keys.length > 1) return path;
    path.push(key);
    one = at(one, key);
    other = at(other, key);
  }
}

// Helpers

function differingKeys(one: unknown, other: unknown): readonly (string | number)[] {
  if (Array.isArray(one) && Array.isArray(other)) {
    // With an item more or less every place after it means another.
    return one.length === other.length
      ? one.flatMap((value: unknown, index) => (sameValue(value, other[index]) ? [] : [index]))
      : [];
  }
  if (!isPlainObject(one) || !isPlainObject(other)) return [];
  return [...new Set([...Object.keys(one), ...Object.keys(other)])].filter(
    (key) => !sameValue(one[key], other[key]),
  );
}

const at = (part: unknown, key: string | number): unknown =>
  typeof part === 'object' && part !== null ? Reflect.get(part, key) : undefined;
