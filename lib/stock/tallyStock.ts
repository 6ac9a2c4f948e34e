import { inOrder } from '@/lib/stored/entriesInForce';
import type { StockItem } from '@/shared/schemas/stock';
import { type Lying, type Posting, postingsOf, type StockEntry } from './stockEntry';
import { pileKey } from './stockKey';

/** What of an item is known to lie at one place in one grade while its entries are gone through. */
interface Tally {
  /** Its item bears no lot: those stand in `lots`. */
  readonly lying: Lying;
  readonly lots: Map<string | null, number>;
  counted: LastCount | null;
}

/** The last count of a pile. */
export interface LastCount {
  /** When, ms since 1970. */
  readonly at: number;
  /** What it found more than the entries before it said; below 0 it is a loss nobody saw. 0 for a first count. */
  readonly difference: number;
}

/** What one end of an entry did. */
export interface TallyChange {
  readonly entry: StockEntry;
  readonly posting: Posting;
  readonly key: string;
  readonly tally: Tally;
  /** All lots together, before and after it. */
  readonly before: number;
  readonly after: number;
}

/**
 * Goes through entries in their one order.
 *
 * @param entries in force, in any order
 * @param watch is told of each change
 */
export function tallyStock(
  entries: readonly StockEntry[],
  watch: (change: TallyChange) => void = () => undefined,
): readonly Tally[] {
  const tallies = new Map<string, Tally>();
  for (const entry of inOrder(entries)) {
    for (const posting of postingsOf(entry)) {
      const lying = { item: withoutLot(posting.item), place: posting.place, grade: posting.grade };
      const key = pileKey(lying);
      const tally = tallies.get(key) ?? { lying, lots: new Map(), counted: null };
      tallies.set(key, tally);
      const before = sumOfLots(tally.lots);
      post(tally, posting, entry.at);
      watch({ entry, posting, key, tally, before, after: sumOfLots(tally.lots) });
    }
  }
  return [...tallies.values()];
}

/** @returns an item as a pile has it: all lots together. */
const withoutLot = (item: StockItem): StockItem => (item.kind === 'blank' ? { ...item, lot: null } : item);

/** @returns the lot that is named; null where none is, and of what comes in no lots. */
export const lotOf = (item: StockItem): string | null => (item.kind === 'blank' ? item.lot : null);

export const sumOfLots = (lots: ReadonlyMap<string | null, number>): number =>
  [...lots.values()].reduce((sum, quantity) => sum + quantity, 0);

// Helpers

function post(tally: Tally, posting: Posting, at: number): void {
  const lot = lotOf(posting.item);
  const { lots } = tally;
  if (posting.says === 'more') {
    lots.set(lot, (lots.get(lot) ?? 0) + posting.by);
    return;
  }
  const isFirst = lots.size === 0;
  const before = lot === null ? sumOfLots(lots) : (lots.get(lot) ?? 0);
  // Whoever counts without looking at lots has counted them all.
  if (lot === null) lots.clear();
  lots.set(lot, posting.is);
  tally.counted = { at, difference: isFirst ? 0 : posting.is - before };
}
