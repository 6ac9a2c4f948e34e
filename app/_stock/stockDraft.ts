import type { StockEntry } from '@/lib/stock/stockEntry';
import { toMinor } from '@/shared/money';
import {
  type StockCause,
  type StockItem,
  type StockPlace,
  type StockUnitCost,
  stockCountSchema,
} from '@/shared/schemas/stock';
import { z } from '@/shared/schemas/z';

/** What can be noted of what is bought to be used up; it is never made here and has no grades. */
const usedUpActs = ['counted', 'bought', 'used', 'scrapped', 'given', 'lost', 'moved'] as const;
/** Of finished pieces: they are made here. */
const finishedActs = [
  'counted',
  'made',
  'sold',
  'given',
  'scrapped',
  'second',
  'returned',
  'lost',
  'moved',
] as const;
/** Of blanks; a blank is never made here. */
const blankActs = [
  'counted',
  'bought',
  'used',
  'scrapped',
  'given',
  'sold',
  'second',
  'returned',
  'lost',
  'moved',
] as const;

export type StockAct = (typeof blankActs | typeof finishedActs | typeof usedUpActs)[number];

const { place: placeSchema, grade: gradeSchema } = stockCountSchema.shape;

/** What is being noted of one thing, as it is typed and as the browser remembers it. */
export const stockDraftSchema = z.strictObject({
  act: z.enum([...usedUpActs, ...finishedActs, ...blankActs]),
  quantity: z.number().nullable(),
  place: placeSchema,
  grade: gradeSchema,
  lot: z.string(),
  /** What one cost, or all of it where it comes in no pieces, in currency units; null where nobody said. */
  price: z.number().nullable(),
  /** Where it lies then, for what is moved. */
  to: placeSchema,
  toGrade: gradeSchema,
});

export type StockDraft = Readonly<z.infer<typeof stockDraftSchema>>;

export const freshDraft: StockDraft = {
  act: 'counted',
  quantity: null,
  place: { kind: 'home' },
  grade: 'first',
  lot: '',
  price: null,
  to: { kind: 'van' },
  toGrade: 'first',
};

/** @returns what can be noted of a thing, the most usual first. */
export const actsOf = ({ kind }: Pick<StockItem, 'kind'>): readonly StockAct[] =>
  kind === 'blank' ? blankActs : kind === 'finished' ? finishedActs : usedUpActs;

/** @returns whether a thing comes in pieces, which have grades and a price each. */
export const isOfPieces = ({ kind }: Pick<StockItem, 'kind'>): boolean =>
  kind === 'blank' || kind === 'finished';

/** @returns whether the price of something that happened can be told. */
export const hasPrice = (act: StockAct, isFirstCount: boolean): boolean =>
  act === 'bought' || act === 'made' || (act === 'counted' && isFirstCount);

type EntryOf<Of> = Of extends StockEntry ? Pick<Of, 'kind' | 'body'> : never;

/** @returns the entry that says what was typed. */
export function stockEntryOf(
  draft: StockDraft & { readonly quantity: number },
  of: { readonly item: StockItem; readonly currency: string },
): EntryOf<StockEntry> {
  const { act, quantity, place, grade, to, toGrade } = draft;
  const item: StockItem = of.item.kind === 'blank' ? { ...of.item, lot: draft.lot.trim() || null } : of.item;
  const unitCost = costOf(draft, of);
  if (act === 'counted') {
    const body = { item, place, grade, quantity };
    return { kind: 'stockCount', body: unitCost === null ? body : { ...body, unitCost } };
  }
  if (act === 'moved' || act === 'second') {
    const there = act === 'moved' ? { place: to, grade: toGrade } : ({ place, grade: 'second' } as const);
    const from = { item, place, grade: act === 'second' ? 'first' : grade } as const;
    return { kind: 'stockTransfer', body: { from, to: { item, ...there }, quantity } };
  }
  const signed = comesIn(act) ? quantity : -quantity;
  return {
    kind: 'stockMove',
    body: { item, place, grade, quantity: signed, cause: act, reference: null, unitCost },
  };
}

/** @returns what keeps it from being noted yet. */
export function stockMissing({ act, quantity, place, to, grade, toGrade }: StockDraft): string | undefined {
  if (quantity === null) return 'How many comes first.';
  if (act !== 'counted' && quantity === 0) return 'Of none there is nothing to note.';
  if ([place, ...(act === 'moved' ? [to] : [])].some((one) => one.kind === 'shop' && one.name === ''))
    return 'The name of the shop comes first.';
  const isSame = act === 'moved' && grade === toGrade && samePlace(place, to);
  return isSame ? 'It lies there already: choose another place or grade.' : undefined;
}

export const samePlace = (one: StockPlace, other: StockPlace): boolean =>
  one.kind === other.kind && (one.kind !== 'shop' || other.kind !== 'shop' || one.name === other.name);

// Helpers

function costOf(
  { act, price, quantity }: StockDraft & { readonly quantity: number },
  { item, currency }: { readonly item: StockItem; readonly currency: string },
): StockUnitCost | null {
  if (price === null || quantity === 0 || !hasPrice(act, true)) return null;
  const paid = { minor: toMinor(price, currency), currency };
  return isOfPieces(item) ? paid : { ...paid, per: quantity };
}

/** @returns whether something of this cause comes in. */
const comesIn = (cause: StockCause): boolean => ['bought', 'made', 'returned'].includes(cause);
