import { type Posting, postingsOf, type StockEntry } from '@/lib/stock/stockEntry';
import { shelfKey } from './shelfKey';

/**
 * Since when goods lie at a shop without a break: once its shelf was empty, what is brought next begins anew.
 *
 * @param names every name of its place; what moves from one to another stays there
 * @param entries of the stock, in force and in order
 * @returns ms since 1970; null where nothing lies there
 */
export function outSince(names: ReadonlySet<string>, entries: readonly StockEntry[]): number | null {
  const shelf = new Map<string, Map<string, number>>();
  let pieces = 0;
  let since: number | null = null;
  for (const entry of entries) {
    for (const posting of postingsOf(entry)) pieces += grownBy(shelf, names, posting);
    since = pieces > 0 ? (since ?? entry.at) : null;
  }
  return since;
}

// Helpers

/** Notes a posting; by how many pieces more lie there now. */
function grownBy(
  shelf: Map<string, Map<string, number>>,
  names: ReadonlySet<string>,
  posting: Posting,
): number {
  const { item, place, grade } = posting;
  if (item.kind !== 'finished' || place.kind !== 'shop' || !names.has(place.name)) return 0;
  const key = shelfKey(item, grade);
  const lying = shelf.get(key) ?? new Map<string, number>();
  shelf.set(key, lying);
  const before = piecesOf(lying);
  lying.set(place.name, posting.says === 'count' ? posting.is : (lying.get(place.name) ?? 0) + posting.by);
  return piecesOf(lying) - before;
}

/** Goods that are short under one name may lie under another; short of all they are none. */
const piecesOf = (lying: ReadonlyMap<string, number>): number =>
  Math.max(
    0,
    [...lying.values()].reduce((sum, quantity) => sum + quantity, 0),
  );
