import { arraysById } from '@/lib/merging/arrayIdentity';
import type { FieldPath } from '@/lib/merging/mergeValues';
import { isPlainObject, sameValue } from '@/lib/merging/sameValue';

/** One place in which two bodies of a draft say different things; `undefined` where a side has nothing there. */
export interface DraftDifference {
  readonly path: FieldPath;
  readonly mine: unknown;
  readonly theirs: unknown;
}

/**
 * Every place in which two bodies differ, as deep as both have something there. Lists whose items have an identity
 * are held against each other item by item, others as a whole.
 *
 * @example draftDifferences({ a: { b: 1, c: 2 } }, { a: { b: 1, c: 3 } })
 *   // => [{ path: ['a', 'c'], mine: 2, theirs: 3 }]
 */
export const draftDifferences = (mine: unknown, theirs: unknown): readonly DraftDifference[] =>
  differences(mine, theirs, []);

// Helpers

function differences(mine: unknown, theirs: unknown, path: FieldPath): readonly DraftDifference[] {
  if (sameValue(mine, theirs)) return [];
  if (isPlainObject(mine) && isPlainObject(theirs)) {
    // A figure with where it comes from: the figure says what differs.
    if (
      Object.hasOwn(mine, 'value') &&
      Object.hasOwn(theirs, 'value') &&
      !sameValue(mine.value, theirs.value)
    ) {
      return [{ path, mine: mine.value, theirs: theirs.value }];
    }
    const keys = new Set([...Object.keys(mine), ...Object.keys(theirs)]);
    return [...keys].flatMap((key) => differences(mine[key], theirs[key], [...path, key]));
  }
  if (Array.isArray(mine) && Array.isArray(theirs)) {
    const [own, other] = arraysById(mine, theirs) ?? [];
    if (own !== undefined && other !== undefined) {
      const ids = new Set([...own.keys(), ...other.keys()]);
      const inItems = [...ids].flatMap((id) => differences(own.get(id), other.get(id), [...path, id]));
      // The same items in another order.
      return inItems.length > 0 ? inItems : [{ path, mine, theirs }];
    }
  }
  return [{ path, mine, theirs }];
}
