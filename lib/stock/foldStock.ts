import type { StockItem } from '@/shared/schemas/stock';
import type { Lying, StockEntry } from './stockEntry';
import { type LastCount, sumOfLots, tallyStock } from './tallyStock';

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

/**
 * Works out what lies where: the last count of everything, and what came and went since.
 *
 * @param entries in force, in any order
 * @returns a pile for everything that any entry speaks of, those of 0 too: it is known that there is none
 */
export const foldStock = (entries: readonly StockEntry[]): readonly Pile[] =>
  tallyStock(entries).map(({ lying, lots, counted }) => ({
    ...lying,
    quantity: sumOfLots(lots),
    lots: [...lots].flatMap(([lot, quantity]) => (quantity === 0 ? [] : [{ lot, quantity }])),
    counted,
  }));

/** @returns how many entries say there are of what a count is of: one lot where it names one, else all. */
export function expectedOf({ quantity, lots }: Pick<Pile, 'quantity' | 'lots'>, lot: string | null): number {
  if (lot === null) return quantity;
  return lots.find((one) => one.lot === lot)?.quantity ?? 0;
}
