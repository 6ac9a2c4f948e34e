import { inOrder } from '@/lib/stored/entriesInForce';
import type { Entry } from '@/shared/schemas/happened';
import type { StallTap } from '@/shared/schemas/stallEvents';

/** A tap as the store hands it out: who tapped, in which order, and when by the clock of that device. */
export type TappedEntry = Pick<Entry, 'id' | 'device' | 'count' | 'at'> & { readonly body: StallTap };

/** @returns the taps of one stall day, each once, in the one order that all devices agree on. */
export function tapsOfDay(taps: readonly TappedEntry[], stallDayId: string): readonly TappedEntry[] {
  const own = taps.filter(({ body }) => body.stallDayId === stallDayId);
  // As the store hands them out they nearly always are, and ordering thousands takes longer than all the rest.
  return isOrdered(own) ? own : inOrder([...new Map(own.map((tap) => [tap.id, tap])).values()]);
}

// Helpers

/** Whether taps, each once, stand in the one order already; false also where only a clock that was set back hides it. */
function isOrdered(taps: readonly TappedEntry[]): boolean {
  const counts = new Map<string, number>();
  return taps.every(({ device, count, at }, place) => {
    const isNext = count > (counts.get(device) ?? 0);
    counts.set(device, count);
    const before = taps[place - 1];
    return (
      isNext && (before === undefined || at > before.at || (at === before.at && device >= before.device))
    );
  });
}
