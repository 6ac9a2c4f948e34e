import type { StockUnitCost } from '@/shared/schemas/stock';
import { costOfSome } from './costOfSome';
import type { Lying, StockEntry } from './stockEntry';
import { pileKey, stockKey } from './stockKey';
import { lotOf, type TallyChange, tallyStock } from './tallyStock';

/** What a pile is worth at what was paid for it. */
export interface PileValue extends Lying {
  /** As the fold has it; below 0 where more went out than was ever in. */
  readonly quantity: number;
  /** Minor units of each currency that was paid in, unrounded. */
  readonly paid: readonly { readonly currency: string; readonly minor: number }[];
  /** How many lie there of which nobody said what they cost: they are worth something, and nobody knows how much. */
  readonly unknown: number;
}

/**
 * What lies where at what was paid for it, first in first out: whatever leaves is the oldest there, of its lot where
 * it names one; what is moved takes its price along. A finished piece has cost what its making is noted to have cost.
 * What a count finds beyond the entries has cost what the count says; most say nothing.
 *
 * @param entries in force, in any order
 */
export function stockValue(entries: readonly StockEntry[]): readonly PileValue[] {
  const stacks = new Map<string, Stack>();
  const onTheWay = new Map<string, Layer[]>();
  const tallies = tallyStock(entries, (change) => {
    const stack = stacks.get(change.key) ?? { layers: [], short: 0, quantity: 0, lying: change.tally.lying };
    stacks.set(change.key, stack);
    stack.quantity = change.after;
    const way = wayOf(change);
    const waiting = way === null ? [] : (onTheWay.get(way) ?? []);
    settle(stack, change, waiting);
    if (way !== null) onTheWay.set(way, waiting);
  });
  return tallies.map(({ lying }) => pileValue(stacks.get(pileKey(lying))));
}

// Helpers

interface Layer {
  lot: string | null;
  quantity: number;
  /** Null where nobody said what it cost. */
  readonly cost: StockUnitCost | null;
}

interface Stack {
  readonly lying: Lying;
  /** The oldest first. */
  layers: Layer[];
  /** Went out beyond what was in: what comes in next makes up for it first. */
  short: number;
  quantity: number;
}

/** Sums of decimals miss by the last digit. */
const SLACK = 1e-9;

/**
 * What leaves here to arrive there, and under which name it waits meanwhile. A transfer is one entry; a load into the
 * car and what comes home from it are two moves that are both said to have come back.
 */
function wayOf({ entry }: TallyChange): string | null {
  if (entry.kind === 'stockTransfer') return entry.id;
  if (entry.kind !== 'stockMove' || entry.body.cause !== 'returned') return null;
  return stockKey(entry.body.item);
}

function settle(stack: Stack, change: TallyChange, waiting: Layer[]): void {
  const { entry, posting, before, after } = change;
  const lot = lotOf(posting.item);
  const more = after - before;
  if (more < 0) waiting.push(...taken(stack, -more, lot));
  else if (more > 0) add(stack, more, lot, entry.kind === 'stockTransfer' ? null : costOf(entry), waiting);
  if (posting.says !== 'count' || lot !== null) return;
  for (const layer of stack.layers) layer.lot = null;
  // Counted, nothing is owed any more; whatever a count found was settled with `more`.
  stack.short = 0;
}

const costOf = (entry: Exclude<StockEntry, { readonly kind: 'stockTransfer' }>): StockUnitCost | null =>
  entry.body.unitCost ?? null;

/** Takes the oldest, first of the lot that is named. */
function taken(stack: Stack, quantity: number, lot: string | null): readonly Layer[] {
  const out: Layer[] = [];
  let left = quantity;
  const take = (isMeant: (layer: Layer) => boolean) => {
    for (const layer of stack.layers) {
      const some = isMeant(layer) ? Math.min(left, layer.quantity) : 0;
      if (some <= 0) continue;
      out.push({ ...layer, quantity: some });
      layer.quantity -= some;
      left -= some;
    }
  };
  if (lot !== null) take((layer) => layer.lot === lot);
  take(() => true);
  stack.layers = stack.layers.filter((layer) => layer.quantity > SLACK);
  if (left > SLACK) {
    stack.short += left;
    out.push({ lot, quantity: left, cost: null });
  }
  return out;
}

/** @param waiting what left elsewhere to arrive here; it is used up */
function add(
  stack: Stack,
  quantity: number,
  lot: string | null,
  cost: StockUnitCost | null,
  waiting: Layer[],
): void {
  const arriving: Layer[] = [];
  let left = quantity;
  while (cost === null && left > SLACK) {
    const first = waiting[0];
    if (first === undefined) break;
    const some = Math.min(left, first.quantity);
    arriving.push({ lot, quantity: some, cost: first.cost });
    first.quantity -= some;
    left -= some;
    if (first.quantity <= SLACK) waiting.shift();
  }
  if (left > SLACK) arriving.push({ lot, quantity: left, cost });
  for (const layer of arriving) {
    const owed = Math.min(stack.short, layer.quantity);
    stack.short -= owed;
    layer.quantity -= owed;
    if (layer.quantity > SLACK) stack.layers.push(layer);
  }
}

function pileValue(stack: Stack | undefined): PileValue {
  if (stack === undefined) throw new Error('a pile without anything noted of it');
  const paid = new Map<string, number>();
  let unknown = 0;
  for (const { quantity, cost } of stack.layers) {
    if (cost === null) unknown += quantity;
    else paid.set(cost.currency, (paid.get(cost.currency) ?? 0) + costOfSome(cost, quantity));
  }
  return {
    ...stack.lying,
    quantity: stack.quantity,
    paid: [...paid].map(([currency, minor]) => ({ currency, minor })),
    unknown,
  };
}
