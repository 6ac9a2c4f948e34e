import { inOrder } from '@/lib/stored/entriesInForce';
import type { Entry } from '@/shared/schemas/happened';
import type { StallTap } from '@/shared/schemas/stallEvents';

/** A tap as the store hands it out: who tapped, in which order, and when by the clock of that device. */
export type TappedEntry = Pick<Entry, 'id' | 'device' | 'count' | 'at'> & { readonly body: StallTap };

/** @returns the taps of one stall day, each once, in the one order that all devices agree on. */
export function tapsOfDay(taps: readonly TappedEntry[], stallDayId: string): readonly TappedEntry[] {
  const own = taps.filter(({ body }) => body.stallDayId === stallDayId);
  return inOrder([...new Map(own.map((tap) => [tap.id, tap])).values()]);
}
