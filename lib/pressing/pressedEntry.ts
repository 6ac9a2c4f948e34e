import { inOrder } from '@/lib/stored/entriesInForce';
import type { Entry } from '@/shared/schemas/happened';
import type { BlankFault, Pressing } from '@/shared/schemas/making/runEvents';

/** A piece lifted from the press, as the store hands it out. */
export type PressedEntry = Pick<Entry, 'id' | 'device' | 'count' | 'at'> & { readonly body: Pressing };

/** Blanks found faulty before they were pressed, as the store hands it out. */
export type BlankFaultEntry = Pick<Entry, 'id' | 'device' | 'count' | 'at'> & { readonly body: BlankFault };

/** Whatever was noted at the press. */
type AtThePress = Pick<Entry, 'id' | 'device' | 'count' | 'at'> & { readonly body: object };

/**
 * What was noted at the press in the order in which it happened: the one order of all devices, save that a piece whose
 * cause was named later stands where it was lifted.
 *
 * @param entries in force, in any order; one that comes twice counts once
 */
export function inPressOrder<Of extends AtThePress>(entries: readonly Of[]): readonly Of[] {
  const latest = new Map<string, number>();
  const moments = inOrder([...new Map(entries.map((one) => [one.id, one])).values()]).map((entry) => {
    // A clock that was set back counts on from the latest it had shown.
    const moment = Math.max(latest.get(entry.device) ?? 0, entry.at);
    latest.set(entry.device, moment);
    const { body } = entry;
    const lifted = 'pressedAt' in body && typeof body.pressedAt === 'number' ? body.pressedAt : moment;
    return { entry, moment: lifted };
  });
  return moments.toSorted((one, other) => one.moment - other.moment).map(({ entry }) => entry);
}
