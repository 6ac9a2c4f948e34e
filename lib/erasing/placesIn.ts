import { isPlainObject } from '@/lib/merging/sameValue';

/** @returns a JSON value with what stands at a path changed; lists on the way are passed through. */
export function changedAt(value: unknown, path: string, change: (part: unknown) => unknown): unknown {
  return changedIn(value, path.split('.'), change);
}

/** @returns the texts that stand at a path of a JSON value */
export function textsAt(value: unknown, path: string): readonly string[] {
  const texts: string[] = [];
  look(value, path.split('.'), texts);
  return texts;
}

// Helpers

function changedIn(
  value: unknown,
  [key, ...inner]: readonly string[],
  change: (part: unknown) => unknown,
): unknown {
  if (key === undefined) return change(value);
  if (Array.isArray(value)) return value.map((item) => changedIn(item, [key, ...inner], change));
  if (!isPlainObject(value) || !Object.hasOwn(value, key)) return value;
  return { ...value, [key]: changedIn(value[key], inner, change) };
}

function look(value: unknown, keys: readonly string[], texts: string[]): void {
  const [key, ...inner] = keys;
  if (key === undefined) {
    if (typeof value === 'string') texts.push(value);
  } else if (Array.isArray(value)) for (const item of value) look(item, keys, texts);
  else if (isPlainObject(value) && Object.hasOwn(value, key)) look(value[key], inner, texts);
}
