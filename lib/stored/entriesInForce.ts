import type { Entry } from '@/shared/schemas/happened';
import { takenBy } from './takeBack';

/** An entry as folds read it. */
type AnyEntry = Pick<Entry, 'id' | 'kind' | 'device' | 'count' | 'at' | 'body'>;

/**
 * Puts entries of any devices in the one order that all devices agree on once they hold the same: those of a device
 * by count, whatever its clock did between, and between devices by clock, then device. A clock that was set back
 * counts on from the latest it had shown.
 */
export function inOrder<Of extends AnyEntry>(entries: readonly Of[]): readonly Of[] {
  const byDevice = grouped(entries, ({ device }) => device);
  return [...byDevice.values()]
    .flatMap((own) => {
      let latest = 0;
      return own
        .toSorted((one, other) => one.count - other.count)
        .map((entry) => {
          latest = Math.max(latest, entry.at);
          return { entry, at: latest };
        });
    })
    .toSorted(
      (one, other) =>
        one.at - other.at ||
        compareText(one.entry.device, other.entry.device) ||
        one.entry.count - other.entry.count,
    )
    .map(({ entry }) => entry);
}

/** @returns the entries that count, in order: without those that others took back, and without the taking back. */
export function entriesInForce<Of extends AnyEntry>(entries: readonly Of[]): readonly Of[] {
  const ordered = inOrder(entries);
  const takers = grouped(ordered, takenBy);
  const known = new Map<string, boolean>();
  const counts = (id: string): boolean => {
    const told = known.get(id);
    if (told !== undefined) return told;
    // Two that take each other back would ask for ever; written by hand, both count.
    known.set(id, true);
    const outcome = !(takers.get(id) ?? []).some((taker) => counts(taker.id));
    known.set(id, outcome);
    return outcome;
  };
  return ordered.filter((entry) => takenBy(entry) === null && counts(entry.id));
}

// Helpers

function grouped<Item>(
  items: readonly Item[],
  keyOf: (item: Item) => string | null,
): ReadonlyMap<string, readonly Item[]> {
  const groups = new Map<string, Item[]>();
  for (const item of items) {
    const key = keyOf(item);
    if (key === null) continue;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [item]);
    else group.push(item);
  }
  return groups;
}

const compareText = (one: string, other: string): number => (one < other ? -1 : one > other ? 1 : 0);
