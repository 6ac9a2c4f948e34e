import { isPlainObject } from '@/lib/merging/sameValue';
import { takenBackAmong } from '@/lib/stored/entriesInForce';
import { TAKE_BACK, takenBy, takesBackHereOnly } from '@/lib/stored/takeBack';
import type { Entry } from '@/shared/schemas/happened';

type Taking = Pick<Entry, 'id' | 'device' | 'count' | 'at' | 'kind' | 'body'>;

/**
 * Which entries must be taken back so that an arrival shows. Where it takes the place of what was here: every entry
 * that did not come and would count, and every one that would take back what came. Where it comes beside: only
 * what an undo of an earlier arrival, or an earlier replacing, left behind.
 *
 * @param rows of the table of entries with those that came, read as far as need be
 * @param came those that nothing here can read included
 * @returns their ids
 */
export function outgoingTakers(
  rows: readonly unknown[],
  came: readonly Pick<Entry, 'id'>[],
  mode: 'beside' | 'replace',
): readonly string[] {
  const ids = new Set(came.map(({ id }) => id));
  const all = rows.flatMap(readTaking);
  const isInTheWay = (entry: Taking): boolean => {
    if (ids.has(entry.id)) return false;
    const target = takenBy(entry);
    if (mode === 'beside') return target !== null && ids.has(target) && takesBackHereOnly(entry);
    return target === null || ids.has(target);
  };
  const inTheWay = all.filter(isInTheWay);
  const takers: string[] = [];
  for (;;) {
    const out = takenBackAmong([...all, ...takers.map(taker)]);
    const counting = inTheWay.filter(({ id }) => !out.has(id));
    if (counting.length === 0) return takers;
    // Taking some back may let others count again.
    takers.push(...counting.map(({ id }) => id));
  }
}

// Helpers

const taker = (entryId: string): Taking => ({
  id: `taker of ${entryId}`,
  device: '',
  count: 1,
  at: 0,
  kind: TAKE_BACK,
  body: { entryId },
});

function readTaking(row: unknown): readonly Taking[] {
  if (!isPlainObject(row) || typeof row.id !== 'string' || typeof row.kind !== 'string') return [];
  return [{ id: row.id, device: '', count: 1, at: 0, kind: row.kind, body: row.body }];
}
