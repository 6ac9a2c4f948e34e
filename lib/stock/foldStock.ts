import { canonicalText } from '@/lib/stored/canonicalText';
import { inOrder } from '@/lib/stored/entriesInForce';
import type { StockItem } from '@/shared/schemas/stock';
import { type Lying, type Posting, postingsOf, type StockEntry } from './stockEntry';

/** How many of an item lie at one place in one grade, all its lots together. */
export interface Pile extends Lying {
  /** Without a lot: those stand in `lots`. */
  readonly item: StockItem;
  /** Below 0 where more went out than was ever in. */
  readonly quantity: number;
  /** What is known lot by lot, those that are 0 left out; null is what nobody named a lot of. */
  readonly lots: readonly { readonly lot: string | null; readonly quantity: number }[];
  readonly counted: LastCount | null;
}

/** The last count of a pile. */
interface LastCount {
  /** When, ms since 1970. */
  readonly at: number;
  /** What it found more than the entries before it said; below 0 it is a loss nobody saw. 0 for a first count. */
  readonly difference: number;
}

/**
 * Works out what lies where: the last count of everything, and what came and went since.
 *
 * @param entries in force, in any order
 * @returns a pile for everything that any entry speaks of, those of 0 too: it is known that there is none
 */
export function foldStock(entries: readonly StockEntry[]): readonly Pile[] {
  const tallies = new Map<string, Tally>();
  for (const entry of inOrder(entries)) {
    for (const posting of postingsOf(entry)) post(tallyOf(tallies, posting), posting, entry.at);
  }
  return [...tallies.values()].map(({ lying, lots, counted }) => ({
    ...lying,
    quantity: sumOf(lots),
    lots: [...lots].flatMap(([lot, quantity]) => (quantity === 0 ? [] : [{ lot, quantity }])),
    counted,
  }));
}

/** @returns how many entries say there are of what a count is of: one lot where it names one, else all. */
export function expectedOf({ quantity, lots }: Pick<Pile, 'quantity' | 'lots'>, lot: string | null): number {
  if (lot === null) return quantity;
  return lots.find((one) => one.lot === lot)?.quantity ?? 0;
}

// Helpers

interface Tally {
  readonly lying: Lying;
  readonly lots: Map<string | null, number>;
  counted: LastCount | null;
}

function tallyOf(tallies: Map<string, Tally>, { item, place, grade }: Lying): Tally {
  const lying: Lying = { item: withoutLot(item), place, grade };
  const key = canonicalText(lying);
  const known = tallies.get(key);
  if (known !== undefined) return known;
  const tally: Tally = { lying, lots: new Map(), counted: null };
  tallies.set(key, tally);
  return tally;
}

function post(tally: Tally, posting: Posting, at: number): void {
  const lot = posting.item.kind === 'blank' ? posting.item.lot : null;
  const { lots } = tally;
  if (posting.says === 'more') {
    lots.set(lot, (lots.get(lot) ?? 0) + posting.by);
    return;
  }
  const isFirst = lots.size === 0;
  const before = lot === null ? sumOf(lots) : (lots.get(lot) ?? 0);
  // Whoever counts without looking at lots has counted them all.
  if (lot === null) lots.clear();
  lots.set(lot, posting.is);
  tally.counted = { at, difference: isFirst ? 0 : posting.is - before };
}

const withoutLot = (item: StockItem): StockItem => (item.kind === 'blank' ? { ...item, lot: null } : item);

const sumOf = (lots: ReadonlyMap<string | null, number>): number =>
  [...lots.values()].reduce((sum, quantity) => sum + quantity, 0);
