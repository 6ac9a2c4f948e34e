import type { StockEntry } from '@/lib/stock/stockEntry';
import { toMinor } from '@/shared/money';
import type { StockCause, StockGrade, StockItem, StockPlace } from '@/shared/schemas/stock';

/** What can be noted of blanks; a blank is never made here. */
export const stockActs = [
  'counted',
  'bought',
  'used',
  'scrapped',
  'given',
  'sold',
  'returned',
  'lost',
  'moved',
] as const;
export type StockAct = (typeof stockActs)[number];

/** What is being noted of one size, as it is typed. */
export interface StockDraft {
  readonly act: StockAct;
  readonly quantity: number | null;
  readonly place: StockPlace;
  readonly grade: StockGrade;
  readonly lot: string;
  /** What one cost, in currency units; null where nobody said. */
  readonly price: number | null;
  /** Where it lies then, for what is moved. */
  readonly to: StockPlace;
  readonly toGrade: StockGrade;
}

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

type EntryOf<Of> = Of extends StockEntry ? Pick<Of, 'kind' | 'body'> : never;

/** @returns the entry that says what was typed. */
export function stockEntryOf(
  draft: StockDraft & { readonly quantity: number },
  of: { readonly blankId: string; readonly size: string; readonly currency: string },
): EntryOf<StockEntry> {
  const { act, quantity, place, grade, to, toGrade, price } = draft;
  const item: StockItem = {
    kind: 'blank',
    blankId: of.blankId,
    size: of.size,
    lot: draft.lot.trim() === '' ? null : draft.lot.trim(),
  };
  if (act === 'counted') return { kind: 'stockCount', body: { item, place, grade, quantity } };
  if (act === 'moved') {
    const body = { from: { item, place, grade }, to: { item, place: to, grade: toGrade }, quantity };
    return { kind: 'stockTransfer', body };
  }
  const unitCost =
    act === 'bought' && price !== null ? { minor: toMinor(price, of.currency), currency: of.currency } : null;
  const signed = comesIn(act) ? quantity : -quantity;
  return {
    kind: 'stockMove',
    body: { item, place, grade, quantity: signed, cause: act, reference: null, unitCost },
  };
}

/** @returns whether something of this cause comes in. */
const comesIn = (cause: StockCause): boolean => ['bought', 'made', 'returned'].includes(cause);

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
