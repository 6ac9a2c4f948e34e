import { fromMinor, LARGEST_AMOUNT, type MinorUnits } from '@/shared/money';
import type { TappedEntry } from './tappedEntry';

/** Fees and taxes of a day, and a tin that is counted, are reckoned from its takings and must be kept exact as well. */
const MOST_TAKEN = LARGEST_AMOUNT / 4;

/**
 * Taps whose money can be added up and kept exact to the cent. Where all together are beyond that, the largest are set
 * aside with their money, not with their pieces, until the rest can be: nobody sells for hundreds of millions at a stall,
 * and one wrong tap that was brought in must not stop the count.
 *
 * @param taps in order
 * @returns the taps in the same order, and how many were set aside
 */
export function withinReach(
  taps: readonly TappedEntry[],
  currency: string,
): { readonly taps: readonly TappedEntry[]; readonly setAside: number } {
  let open = taps.reduce((sum, tap) => sum + sizeOf(tap), 0);
  const reaches = () => fromMinor(open as MinorUnits, currency) <= MOST_TAKEN;
  if (reaches()) return { taps, setAside: 0 };
  const largest = taps
    .filter((tap) => sizeOf(tap) > 0)
    .toSorted((one, other) => sizeOf(other) - sizeOf(one) || (one.id < other.id ? -1 : 1));
  const aside = new Set<string>();
  for (const tap of largest) {
    if (reaches()) break;
    open -= sizeOf(tap);
    aside.add(tap.id);
  }
  return { taps: taps.map((tap) => (aside.has(tap.id) ? unpaid(tap) : tap)), setAside: aside.size };
}

// Helpers

/** What a tap moves, whole minor units, either way. */
const sizeOf = ({ body: { tap } }: TappedEntry): number => ('minor' in tap ? Math.abs(tap.minor) : 0);

function unpaid(tapped: TappedEntry): TappedEntry {
  const { tap } = tapped.body;
  return 'minor' in tap ? { ...tapped, body: { ...tapped.body, tap: { ...tap, minor: 0 } } } : tapped;
}
