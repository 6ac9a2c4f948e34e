import type { Entry } from '@/shared/schemas/happened';
import { takenBy } from './takeBack';

/** An entry as the order sees it; papers are counted with entries and stand in the same order. */
type Counted = Pick<Entry, 'id' | 'device' | 'count' | 'at'>;
type AnyEntry = Counted & Pick<Entry, 'kind' | 'body'>;

/**
 * Puts entries of any devices in the one order that all devices agree on once they hold the same: those of a device
 * by count, whatever its clock did between, and between devices by clock, then device. A clock that was set back
 * counts on from the latest it had shown.
 */
export function inOrder<Of extends Counted>(entries: readonly Of[]): readonly Of[] {
  const counted = entries.toSorted(
    (one, other) =>
      compareText(one.device, other.device) || one.count - other.count || compareText(one.id, other.id),
  );
  let device: string | null = null;
  let latest = 0;
  const timed = counted.map((entry) => {
    latest = entry.device === device ? Math.max(latest, entry.at) : entry.at;
    device = entry.device;
    return { entry, at: latest };
  });
  // Sorting keeps the order of what is equal: of the same moment the lower device first, and its counts as they were.
  return timed.toSorted((one, other) => one.at - other.at).map(({ entry }) => entry);
}

/**
 * The entries that count: without those that others took back, and without the taking back. One that took back
 * may itself be taken back, however often.
 *
 * @returns them in order; whatever the order was they came in
 */
export function entriesInForce<Of extends AnyEntry>(entries: readonly Of[]): readonly Of[] {
  const outOfForce = takenBackAmong(entries);
  return inOrder(entries.filter((entry) => takenBy(entry) === null && !outOfForce.has(entry.id)));
}

/**
 * Each taking back names one entry, so they hang together in trees, decided from the leaves: an entry is out as
 * soon as one that counts takes it back, and counts once all that took it back are out. Several that take each
 * other back in a ring are never decided; only a hand could have written that, and all of them count.
 *
 * @returns the ids of entries that do not count, takings back among them
 */
export function takenBackAmong(entries: readonly AnyEntry[]): ReadonlySet<string> {
  const targets = new Map<string, string>();
  for (const entry of entries) {
    const target = takenBy(entry);
    if (target !== null) targets.set(entry.id, target);
  }
  /** How many takers of each entry are not out. */
  const takers = new Map<string, number>();
  for (const target of targets.values()) takers.set(target, (takers.get(target) ?? 0) + 1);
  const out = new Set<string>();
  const counting = [...targets.keys()].filter((id) => !takers.has(id));
  for (let taker = counting.pop(); taker !== undefined; taker = counting.pop()) {
    const target = targets.get(taker);
    if (target === undefined || out.has(target)) continue;
    out.add(target);
    const next = targets.get(target);
    if (next === undefined) continue;
    const left = (takers.get(next) ?? 0) - 1;
    takers.set(next, left);
    if (left === 0 && targets.has(next) && !out.has(next)) counting.push(next);
  }
  return out;
}

// Helpers

const compareText = (one: string, other: string): number => (one < other ? -1 : one > other ? 1 : 0);
