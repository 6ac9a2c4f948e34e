import { tierAt } from '@/lib/buying/tierAt';
import type { LearnedPlace, Lesson } from '@/lib/learning/lesson';
import { billedEach, paidEach } from '@/lib/stock/billedEach';
import { sameItem } from '@/lib/stock/stockKey';
import type { Blank } from '@/shared/schemas/blank';
import type { LearnedSubject } from '@/shared/schemas/making/learnedEvents';
import type { Supplier, SupplyItem } from '@/shared/schemas/making/supply';
import type { GoodsIn } from '@/shared/schemas/making/supplyEvents';
import type { Workshop } from '@/shared/schemas/workshop';

/** Where prices are kept that a bill can answer. */
interface PricedDocuments {
  /** What the store calls the workshop. */
  readonly workshopId: string;
  readonly workshop: Pick<Workshop, 'currency' | 'sheets' | 'rates'>;
  readonly blanks: Readonly<Record<string, Blank>>;
  readonly suppliers: Readonly<Record<string, Supplier>>;
}

/** A price that was paid and that a document holds otherwise. */
export interface PaidPrice {
  readonly item: SupplyItem;
  /** What is taken over. */
  readonly lesson: Lesson;
}

/**
 * @param goodsIn a delivery
 * @param day on which it is taken over, YYYY-MM-DD
 * @returns the prices it was billed at, each with every place that holds another one: taken over whole, for one bill says
 *   what is asked now. Nothing of a bill in another currency, or of what was not billed yet; all inks have one price, which
 *   is what a mL of all that were billed cost
 */
export function paidPrices(goodsIn: GoodsIn, documents: PricedDocuments, day: string): readonly PaidPrice[] {
  if (goodsIn.currency !== documents.workshop.currency) return [];
  const billed = billedEach(goodsIn);
  const inks = billed.filter(({ item }) => item.kind === 'ink');
  return billed.flatMap((one) => {
    const { item, counted } = one;
    const isInk = item.kind === 'ink';
    // All inks are reckoned with at one price, which the first of them tells.
    if (isInk && one !== inks[0]) return [];
    const subject = subjectOf(item);
    const value = paidEach(isInk ? meanOf(inks) : one.eachMinor, goodsIn.currency);
    const places = [
      ...ratePlaces(item, value, documents, day),
      ...(isInk
        ? inkOffers(inks, goodsIn, documents)
        : offerPlaces(item, counted, value, goodsIn.supplierId, documents)),
    ];
    if (places.length === 0) return [];
    return [
      {
        item,
        lesson: {
          ...{ subject, measured: value, unit: 'money', observations: 1, spread: null, upper: null },
          ...{ standard: standardOf(places) ?? value, seen: null, runIds: [], places },
        },
      },
    ];
  });
}

// Helpers

type Billed = ReturnType<typeof billedEach>[number];

/** Minor units of a mL of all inks that were billed. */
const meanOf = (inks: readonly Billed[]): number =>
  inks.reduce((sum, { eachMinor, counted }) => sum + eachMinor * counted, 0) /
  inks.reduce((sum, { counted }) => sum + counted, 0);

/** Each ink's own offer at its own price. */
const inkOffers = (
  inks: readonly Billed[],
  { supplierId, currency }: GoodsIn,
  documents: PricedDocuments,
): readonly LearnedPlace[] =>
  inks.flatMap(({ item, counted, eachMinor }) =>
    offerPlaces(item, counted, paidEach(eachMinor, currency), supplierId, documents),
  );

function subjectOf(item: SupplyItem): LearnedSubject {
  switch (item.kind) {
    case 'blank':
      return { of: 'blankPrice', blankId: item.blankId, size: item.size };
    case 'paper':
      return { of: 'sheetPrice', sheetId: item.sheetId };
    case 'consumable':
      return { of: 'consumablePrice', consumableId: item.consumableId };
    case 'ink':
      return { of: 'inkPrice' };
    default:
      return item satisfies never;
  }
}

/** The blank's or the paper's own price. */
function ratePlaces(
  item: SupplyItem,
  value: number,
  { blanks, workshop, workshopId }: PricedDocuments,
  day: string,
): readonly LearnedPlace[] {
  if (item.kind === 'blank') {
    const sizes = blanks[item.blankId]?.sizes ?? [];
    const at = sizes.findIndex(({ name }) => name === item.size);
    const before = sizes[at]?.price;
    if (before === undefined || before?.value === value) return [];
    return [
      {
        ...{ kind: 'blank', id: item.blankId, path: ['sizes', at, 'price'], before: heldOf(before) },
        after: paidRate(value, 'money/piece', day),
      },
    ];
  }
  if (item.kind === 'ink') {
    const before = workshop.rates.inkPrice ?? null;
    if (before?.value === value) return [];
    return [
      {
        ...{ kind: 'workshop', id: workshopId, path: ['rates', 'inkPrice'], before: heldOf(before) },
        after: paidRate(value, 'money/mL', day),
      },
    ];
  }
  if (item.kind !== 'paper') return [];
  const sheet = workshop.sheets.find(({ id }) => id === item.sheetId);
  if (sheet === undefined || sheet.price?.value === value) return [];
  return [
    {
      ...{
        kind: 'workshop',
        id: workshopId,
        path: ['sheets', sheet.id, 'price'],
        before: heldOf(sheet.price),
      },
      after: paidRate(value, sheet.form === 'roll' ? 'money/m' : 'money/sheet', day),
    },
  ];
}

/** The step of the supplier's offers that so many fall into. */
function offerPlaces(
  item: SupplyItem,
  quantity: number,
  value: number,
  supplierId: string | null,
  { suppliers }: PricedDocuments,
): readonly LearnedPlace[] {
  const supplier = supplierId === null ? undefined : suppliers[supplierId];
  if (supplierId === null || supplier === undefined) return [];
  return supplier.offers.flatMap((offer): readonly LearnedPlace[] => {
    if (!sameItem(offer.item, item)) return [];
    const tier = tierAt(offer.tiers, quantity);
    if (tier === null || tier.each === value) return [];
    const step = offer.tiers.indexOf(tier);
    const before = tier.each;
    const path = ['offers', offer.id, 'tiers', step, 'each'];
    return [{ kind: 'supplier', id: supplierId, path, before, after: value }];
  });
}

const paidRate = (value: number, unit: string, day: string): LearnedPlace['after'] => ({
  ...{ value, unit, date: day, origin: 'yours' },
});

type Held =
  | Exclude<Blank['sizes'][number]['price'], null>
  | Exclude<Workshop['sheets'][number]['price'], null>
  | NonNullable<Workshop['rates']['inkPrice']>;

function heldOf(rate: Held | null): LearnedPlace['before'] {
  if (rate === null) return null;
  const { count, ...rest } = rate;
  return count === undefined ? rest : { ...rest, count };
}

/** What was reckoned with, where a place holds a price. */
function standardOf(places: readonly LearnedPlace[]): number | null {
  for (const { before } of places) {
    if (typeof before === 'number') return before;
    if (before !== null && 'value' in before) return before.value;
  }
  return null;
}
