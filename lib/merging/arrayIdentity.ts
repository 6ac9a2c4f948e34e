import { isPlainObject } from './sameValue';

/** Fields by which an item of a list stays the same item when it is edited, the surest first. */
const identityFields = ['id', 'size', 'name'] as const;

/** Items of a list by what identifies them, in the order of the list. */
export type ItemsById = ReadonlyMap<string, unknown>;

/**
 * @returns the lists as items by identity, all by the same field, or null where some item has none
 * or two items share one: then a list can only be taken whole.
 */
export function arraysById(...lists: readonly (readonly unknown[])[]): readonly ItemsById[] | null {
  for (const field of identityFields) {
    const keyed = lists.map((list) => byField(list, field));
    if (keyed.every((items) => items !== null)) return keyed;
  }
  return null;
}

function byField(list: readonly unknown[], field: string): ItemsById | null {
  const items = new Map<string, unknown>();
  for (const item of list) {
    const key = isPlainObject(item) ? item[field] : undefined;
    if (typeof key !== 'string' || items.has(key)) return null;
    items.set(key, item);
  }
  return items;
}
