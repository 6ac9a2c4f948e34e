import type { Entry } from '@/shared/schemas/happened';
import { type Counted, emptyOrder, withEntries } from './entryOrder';
import { takenBy } from './takeBack';

type AnyEntry = Counted & Pick<Entry, 'kind' | 'body'>;

/** @returns entries, or papers, of any devices in the one order. */
export const inOrder = <Of extends Counted>(entries: readonly Of[]): readonly Of[] =>
  withEntries<Of>(emptyOrder, entries).entries;

/**
 * The entries that count: without those that others took back, and without the taking back. One that took back
 * may itself be taken back, however often.
 *
 * @returns them in order; whatever the order was they came in
 */
export const entriesInForce = <Of extends AnyEntry>(entries: readonly Of[]): readonly Of[] =>
  inForceAmong(inOrder(entries));

/** @returns those of some entries that count, in the order they are in. */
export function inForceAmong<Of extends AnyEntry>(entries: readonly Of[]): readonly Of[] {
  const out = takenBackAmong(entries);
  return entries.filter((entry) => takenBy(entry) === null && !out.has(entry.id));
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
