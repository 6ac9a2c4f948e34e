import { stockKey } from '@/lib/stock/stockKey';
import type { Blank } from '@/shared/schemas/blank';
import type { SupplierOffer } from '@/shared/schemas/making/supply';
import type { BuyingAsked } from './buyingAsked';
import type { BuyingRow } from './buyingPlan';
import type { BuyingTrouble } from './buyingTrouble';
import type { Bought } from './rowsToBuy';
import type { WorkNeeds } from './workNeeds';

/** @returns everything that is wrong with a list and what it stands on, all of it at once. */
export const buyingTroubles = (
  asked: BuyingAsked,
  needs: readonly (WorkNeeds | null)[],
  rows: readonly BuyingRow[],
  { choice, chosenGone }: Bought,
): readonly BuyingTrouble[] => [
  ...(asked.made ?? []).map(({ name }) => ({ what: 'made', name }) as const),
  ...(asked.madeBefore ?? []).map(({ name }) => ({ what: 'madeBefore', name }) as const),
  ...workTroubles(asked, needs, rows),
  ...rows.flatMap(rowTroubles),
  ...chosenGone.flatMap(({ row, supplierId }): readonly BuyingTrouble[] => {
    const item = rows[row]?.item;
    return item === undefined ? [] : [{ what: 'chosenGone', item, supplierId }];
  }),
  ...choice.baskets.flatMap(({ supplierId, freightMinor, shortMinor }): readonly BuyingTrouble[] => [
    ...(freightMinor === null ? [{ what: 'freightUnknown', supplierId } as const] : []),
    ...(supplierId !== null && shortMinor > 0
      ? [{ what: 'belowMinimum', supplierId, shortMinor } as const]
      : []),
  ]),
  ...offerTroubles(asked, rows),
];

// Helpers

function workTroubles(
  { list, works }: BuyingAsked,
  needs: readonly (WorkNeeds | null)[],
  rows: readonly BuyingRow[],
): readonly BuyingTrouble[] {
  const needed = new Set(rows.map(({ item }) => stockKey(item)));
  return [
    ...list.works.flatMap(({ jobId }): readonly BuyingTrouble[] =>
      works.some((work) => work.jobId === jobId) ? [] : [{ what: 'jobGone', jobId }],
    ),
    ...works.flatMap(({ jobId, name }, at): readonly BuyingTrouble[] =>
      needs[at] == null ? [{ what: 'uncosted', jobId, name }] : [],
    ),
    ...list.held.flatMap(({ item, quantity }): readonly BuyingTrouble[] =>
      needed.has(stockKey(item)) || quantity === 0 ? [] : [{ what: 'heldUnneeded', item, held: quantity }],
    ),
  ];
}

function rowTroubles({ item, stock, held, toBuy, purchase }: BuyingRow): readonly BuyingTrouble[] {
  const troubles: BuyingTrouble[] = [];
  if (stock.kind === 'counted') {
    const { onHand, reserved } = stock;
    if (onHand < 0) troubles.push({ what: 'negativeStock', item, onHand });
    else if (reserved > onHand) troubles.push({ what: 'reservedBeyond', item, onHand, reserved });
  }
  if (held !== null && held < toBuy) troubles.push({ what: 'heldBelowNeed', item, held, toBuy });
  if (purchase === null) return troubles;
  const { quantity, amountMinor, inTime, orderBy } = purchase;
  if (held !== null && quantity !== held && purchase.more === null) {
    troubles.push({ what: 'heldNotPacks', item, held, buy: quantity });
  }
  if (amountMinor === null) troubles.push({ what: 'noPrice', item });
  if (inTime === false && orderBy !== null) troubles.push({ what: 'late', item, orderBy });
  return troubles;
}

/** Offers of what the list needs, and of its blanks in sizes that they have not. */
function offerTroubles(
  { suppliers, works }: BuyingAsked,
  rows: readonly BuyingRow[],
): readonly BuyingTrouble[] {
  const needed = new Set(rows.map(({ item }) => stockKey(item)));
  const blanks = new Map(works.flatMap(({ input }) => Object.entries(input.blanks)));
  return suppliers.flatMap(({ id: supplierId, supplier }) =>
    supplier.archivedOn !== null
      ? []
      : supplier.offers.flatMap((offer): readonly BuyingTrouble[] => [
          ...unknownSize(supplierId, offer, blanks),
          ...(needed.has(stockKey(offer.item)) ? tierTroubles(supplierId, offer) : []),
        ]),
  );
}

function unknownSize(
  supplierId: string,
  { id: offerId, item }: SupplierOffer,
  blanks: ReadonlyMap<string, Blank>,
): readonly BuyingTrouble[] {
  if (item.kind !== 'blank') return [];
  const blank = blanks.get(item.blankId);
  const isKnown = blank?.sizes.some(({ name }) => name === item.size) ?? true;
  return isKnown ? [] : [{ what: 'offerUnknownSize', supplierId, offerId, size: item.size }];
}

function tierTroubles(supplierId: string, { id: offerId, tiers }: SupplierOffer): readonly BuyingTrouble[] {
  const pairs = tiers.flatMap((tier, at) => {
    const before = tiers[at - 1];
    return before === undefined ? [] : [{ before, tier }];
  });
  const sorted = tiers.toSorted((one, other) => one.from - other.from);
  return [
    ...(pairs.some(({ before, tier }) => tier.from < before.from)
      ? [{ what: 'tiersNotRising', supplierId, offerId } as const]
      : []),
    ...sorted.flatMap((tier, at): readonly BuyingTrouble[] => {
      const before = sorted[at - 1];
      if (before === undefined) return [];
      if (before.from === tier.from) return [{ what: 'tierTwice', supplierId, offerId, from: tier.from }];
      return tier.each > before.each ? [{ what: 'tierDearer', supplierId, offerId, from: tier.from }] : [];
    }),
  ];
}
