import { canonicalText } from '@/lib/stored/canonicalText';
import type { StockMove } from '@/shared/schemas/stock';
import { pileKey } from './stockKey';
import { lotOf } from './tallyStock';

/** @returns what is to be moved in all, less what was moved already; what was moved too much goes back. */
export function missedMoves(wanted: readonly StockMove[], moved: readonly StockMove[]): readonly StockMove[] {
  const all = new Map<string, { readonly move: StockMove; quantity: number }>();
  const add = (move: StockMove, quantity: number) => {
    const { item, place, grade, cause } = move;
    const key = canonicalText({ pile: pileKey({ item, place, grade }), lot: lotOf(item), cause });
    const known = all.get(key) ?? { move, quantity: 0 };
    known.quantity += quantity;
    all.set(key, known);
  };
  for (const move of wanted) add(move, move.quantity);
  for (const move of moved) add(move, -move.quantity);
  return [...all.values()].flatMap(({ move, quantity }) =>
    Math.abs(quantity) < SLACK ? [] : [{ ...move, quantity }],
  );
}

// Helpers

/** Sums of decimals miss by the last digit. */
const SLACK = 1e-9;
