import type { StockTransfer } from '@/shared/schemas/stock';
import type { Pile } from './foldStock';
import type { StockEntry } from './stockEntry';

interface Renaming {
  readonly blankId: string;
  readonly from: string;
  readonly to: string;
}

/**
 * What follows a size to its new name: everything that lies somewhere under the old one, lot by lot. Entries never
 * change, so what they call by the old name is said to lie under the new one.
 */
export const renamedStock = (
  piles: readonly Pile[],
  { blankId, from, to }: Renaming,
): readonly StockTransfer[] =>
  piles.flatMap(({ item, place, grade, lots }) => {
    if (item.kind !== 'blank' || item.blankId !== blankId || item.size !== from) return [];
    // That there is none is known too, and stays so.
    const known = lots.length === 0 ? [{ lot: null, quantity: 0 }] : lots;
    return known.map(({ lot, quantity }) => {
      const here = { item: { ...item, lot }, place, grade } as const;
      const there = { item: { ...item, size: to, lot }, place, grade } as const;
      return quantity < 0
        ? { from: there, to: here, quantity: -quantity }
        : { from: here, to: there, quantity };
    });
  });

/** @returns whether an entry only follows a size to its new name. */
export function isRenaming(entry: StockEntry): boolean {
  if (entry.kind !== 'stockTransfer') return false;
  const { from, to } = entry.body;
  return from.item.kind === 'blank' && to.item.kind === 'blank' && from.item.size !== to.item.size;
}
