import { arraysById, type ItemsById } from './arrayIdentity';
import { mergeOrder } from './mergeOrder';
import { isPlainObject, type PlainObject, sameValue } from './sameValue';

/** Where in a body a field sits: keys of objects and identities of list items. */
export type FieldPath = readonly string[];

/** What came of two edits of the same value. */
interface Merged {
  readonly value: unknown;
  /** Fields that both sides changed to different values; mine was taken. */
  readonly conflicts: readonly FieldPath[];
}

/**
 * Merges two edits of one JSON value field by field: a field that one side left alone takes the other side's
 * value, and where both changed it mine is taken and the place is told.
 *
 * Objects are merged by key and lists of identified items item by item; every other list, and objects that
 * mean one thing only as a whole, are taken from one side.
 */
export const mergeValues = (base: unknown, mine: unknown, theirs: unknown): Merged =>
  merge(base, mine, theirs, []);

/** Stands for a key that is not there; `undefined` would be a value. */
const absent: unique symbol = Symbol('absent');

function merge(base: unknown, mine: unknown, theirs: unknown, path: FieldPath): Merged {
  if (sameValue(mine, theirs) || sameValue(theirs, base)) return { value: mine, conflicts: [] };
  if (sameValue(mine, base)) return { value: theirs, conflicts: [] };
  if (
    isPlainObject(base) &&
    isPlainObject(mine) &&
    isPlainObject(theirs) &&
    mergesByKey(base, mine, theirs)
  ) {
    return mergeObjects(base, mine, theirs, path);
  }
  if (Array.isArray(base) && Array.isArray(mine) && Array.isArray(theirs)) {
    const [baseItems, mineItems, theirItems] = arraysById(base, mine, theirs) ?? [];
    if (baseItems !== undefined && mineItems !== undefined && theirItems !== undefined) {
      return mergeArrays(baseItems, mineItems, theirItems, path);
    }
  }
  return { value: mine, conflicts: [path] };
}

function mergeObjects(base: PlainObject, mine: PlainObject, theirs: PlainObject, path: FieldPath): Merged {
  const keys = [...new Set([...Object.keys(mine), ...Object.keys(theirs)])];
  const merged = keys.map((key) => ({
    key,
    ...merge(at(base, key), at(mine, key), at(theirs, key), [...path, key]),
  }));
  return {
    value: Object.fromEntries(
      merged.filter(({ value }) => value !== absent).map(({ key, value }) => [key, value]),
    ),
    conflicts: merged.flatMap(({ conflicts }) => conflicts),
  };
}

function mergeArrays(base: ItemsById, mine: ItemsById, theirs: ItemsById, path: FieldPath): Merged {
  const { order, bothMoved } = mergeOrder([...base.keys()], [...mine.keys()], [...theirs.keys()]);
  const merged = order.map((id) =>
    merge(itemAt(base, id), itemAt(mine, id), itemAt(theirs, id), [...path, id]),
  );
  return {
    value: merged.map(({ value }) => value).filter((value) => value !== absent),
    conflicts: [...(bothMoved ? [path] : []), ...merged.flatMap(({ conflicts }) => conflicts)],
  };
}

const at = (object: PlainObject, key: string): unknown => (Object.hasOwn(object, key) ? object[key] : absent);
const itemAt = (items: ItemsById, id: string): unknown => (items.has(id) ? items.get(id) : absent);

/** Keys that tell which shape an object has; mixing two shapes would make one that neither side meant. */
const tagKeys = ['kind', 'state', 'type', 'unit'] as const;

/** Keys that together say one thing: a figure with its unit, a colour. Half of each would be nobody's. */
const inseparable: readonly (readonly string[])[] = [
  ['value', 'unit'],
  ['L', 'a', 'b'],
];

const mergesByKey = (base: PlainObject, mine: PlainObject, theirs: PlainObject): boolean =>
  tagKeys.every((tag) => sameValue(base[tag], mine[tag]) && sameValue(base[tag], theirs[tag])) &&
  !inseparable.some((keys) => keys.every((key) => Object.hasOwn(mine, key)));
