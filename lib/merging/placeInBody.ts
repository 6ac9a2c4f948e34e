import { arraysById } from './arrayIdentity';
import type { FieldPath } from './mergeValues';
import { isPlainObject } from './sameValue';

/**
 * A place told by identities of list items, as the way by positions, which can be put into words.
 *
 * @returns the way as far as it leads in the body: what was taken out since ends it at its list
 */
export function placeInBody(body: unknown, path: FieldPath): readonly (string | number)[] {
  const way: (string | number)[] = [];
  let part = body;
  for (const step of path) {
    if (Array.isArray(part)) {
      const [items] = arraysById(part) ?? [];
      const at = items === undefined ? -1 : [...items.keys()].indexOf(step);
      if (at < 0) return way;
      way.push(at);
      part = part[at];
    } else {
      way.push(step);
      part = isPlainObject(part) ? part[step] : undefined;
    }
  }
  return way;
}
