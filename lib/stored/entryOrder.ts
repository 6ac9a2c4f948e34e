import { compareText } from '@/shared/compareText';
import type { Entry } from '@/shared/schemas/happened';

/** An entry as the order sees it; papers are counted with entries and stand in the same order. */
export type Counted = Pick<Entry, 'id' | 'device' | 'count' | 'at'>;

/**
 * Entries of any devices in the one order that all devices agree on once they hold the same: those of a device by
 * count, whatever its clock did between, and between devices by clock, then device. A clock that was set back counts
 * on from the latest it had shown.
 */
export interface EntryOrder<Of extends Counted> {
  readonly entries: readonly Of[];
  /** The moment each stands at. */
  readonly moments: readonly number[];
  /** The last entry of each device. */
  readonly last: ReadonlyMap<string, { readonly count: number; readonly moment: number }>;
}

export const emptyOrder: EntryOrder<never> = { entries: [], moments: [], last: new Map() };

/** Adds entries to an order. What each device wrote after all that is there is put in its place; else all are ordered anew. */
export function withEntries<Of extends Counted>(order: EntryOrder<Of>, more: readonly Of[]): EntryOrder<Of> {
  if (more.length === 0) return order;
  const isLater = more.every(({ device, count }) => count > (order.last.get(device)?.count ?? 0));
  return isLater ? merged(order, more) : merged(emptyOrder, [...order.entries, ...more]);
}

// Helpers

function merged<Of extends Counted>(order: EntryOrder<Of>, more: readonly Of[]): EntryOrder<Of> {
  const last = new Map(order.last);
  const timed = more
    .toSorted(
      (one, other) =>
        compareText(one.device, other.device) || one.count - other.count || compareText(one.id, other.id),
    )
    .map((entry) => {
      const moment = Math.max(last.get(entry.device)?.moment ?? 0, entry.at);
      last.set(entry.device, { count: entry.count, moment });
      return { entry, moment };
    })
    // Sorting keeps the order of what is equal: the lower device first, and its counts as they were.
    .toSorted((one, other) => one.moment - other.moment);
  const entries: Of[] = [];
  const moments: number[] = [];
  let at = 0;
  const takeBefore = (moment: number, device: string): void => {
    for (; at < order.entries.length; at += 1) {
      const [there, when] = [order.entries[at], order.moments[at] ?? 0];
      const isBefore = when < moment || (when === moment && compareText(there?.device ?? '', device) <= 0);
      if (there === undefined || !isBefore) return;
      entries.push(there);
      moments.push(when);
    }
  };
  for (const { entry, moment } of timed) {
    takeBefore(moment, entry.device);
    entries.push(entry);
    moments.push(moment);
  }
  takeBefore(Number.POSITIVE_INFINITY, '');
  return { entries, moments, last };
}
