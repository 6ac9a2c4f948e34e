import { isPlainObject } from '@/lib/merging/sameValue';
import type { FieldPath } from '@/shared/setIn';

/**
 * Follows a path into a document; in a list a name is the id of what is meant, wherever it stands by now.
 *
 * @returns what is held there, and the way to it by places of lists; null where it leads nowhere
 */
export function heldAt(
  body: unknown,
  path: FieldPath,
): { readonly value: unknown; readonly path: FieldPath } | null {
  let value = body;
  const way: (string | number)[] = [];
  for (const key of path) {
    const at = Array.isArray(value) && typeof key === 'string' ? value.findIndex(hasId(key)) : key;
    if (Array.isArray(value) && typeof at === 'number' && at >= 0 && at < value.length) value = value[at];
    else if (isPlainObject(value) && at in value) value = value[at];
    else return null;
    way.push(at);
  }
  return { value, path: way };
}

// Helpers

const hasId =
  (id: string) =>
  (item: unknown): boolean =>
    isPlainObject(item) && item.id === id;
