import { stockKey } from '@/lib/stock/stockKey';
import { addWorkingDays } from '@/shared/days';
import { toMinor } from '@/shared/money';
import type { BuyingList } from '@/shared/schemas/making/supply';
import type { BuyingAsked } from './buyingAsked';
import type { BuyingRow, Purchase, StockFor } from './buyingPlan';
import { type Choice, chooseSuppliers, type ToBuy } from './chooseSuppliers';
import type { BasketTerms } from './fillBasket';
import type { NeededThing } from './neededThings';
import { freeOf, stockFor } from './stockFor';
import { bestPurchase, type Way, waysToBuy } from './waysToBuy';
import type { WorkNeeds } from './workNeeds';

/** A thing with what lies of it and the ways to have it. */
interface Weighed {
  readonly thing: NeededThing;
  readonly stock: StockFor;
  readonly toBuy: number;
  readonly held: number | null;
  /** All of the thing itself. */
  readonly ways: readonly Way[];
  readonly substitutes: readonly Way[];
  /** Of which the cheapest is taken. */
  readonly allowed: readonly Way[];
  /** Whether the maker chose an offer that is there no more. */
  readonly chosenGone: string | null;
}

export interface Bought {
  readonly rows: readonly BuyingRow[];
  /** Places of rows by place of the choice's things. */
  readonly places: readonly number[];
  readonly choice: Choice;
  /** Rows whose chosen offer is gone, with its supplier. */
  readonly chosenGone: readonly { readonly row: number; readonly supplierId: string }[];
}

/** What decides a purchase beside the needs. */
type BuyingTerms = Pick<BuyingAsked, 'asOf' | 'currency' | 'works' | 'suppliers' | 'piles' | 'reserved'> & {
  readonly list: Pick<BuyingList, 'held' | 'chosen'>;
};

/** Noise of a difference. */
const NOISE = 1e-9;

/** Stock first, then the suppliers that cost least together; the maker's own numbers and offers are kept. */
export function rowsToBuy(
  things: readonly NeededThing[],
  needs: readonly (WorkNeeds | null)[],
  terms: BuyingTerms,
): Bought {
  const weighed = things.map((thing) => weigh(thing, terms));
  const places = weighed.flatMap((one, at) => ((one.held ?? one.toBuy) > 0 ? [at] : []));
  const asked = places.flatMap((at): readonly ToBuy[] => {
    const one = weighed[at];
    return one === undefined
      ? []
      : [{ quantity: one.held ?? one.toBuy, isHeld: one.held !== null, ways: one.allowed }];
  });
  const freight = ownFreight(needs);
  const choice = chooseSuppliers(asked, (id) => termsOf(id, freight, terms), terms.currency);
  const rows = weighed.map((one, at) =>
    rowOf(one, choice.purchases[places.indexOf(at)] ?? null, terms.currency),
  );
  return {
    ...{ rows, places, choice },
    chosenGone: weighed.flatMap(({ chosenGone }, row) =>
      chosenGone === null ? [] : [{ row, supplierId: chosenGone }],
    ),
  };
}

// Helpers

function weigh(thing: NeededThing, terms: BuyingTerms): Weighed {
  const { works, list, suppliers, asOf } = terms;
  const key = stockKey(thing.item);
  const pressed = works.flatMap(({ pressOn }, at) =>
    pressOn !== null && (thing.byWork[at] ?? 0) > 0 ? [pressOn] : [],
  );
  const [first] = pressed.toSorted();
  const arriveBy = first === undefined ? null : addWorkingDays(first, -1);
  const { ways, substitutes } = waysToBuy(thing, suppliers, { asOf, arriveBy });
  const chosen = list.chosen.find(({ item }) => stockKey(item) === key);
  const isChosen = (way: Way) => way.supplierId === chosen?.supplierId && way.offerId === chosen?.offerId;
  const own = chosen === undefined ? undefined : [...ways, ...substitutes].find(isChosen);
  const inTime = ways.filter((way) => way.inTime !== false);
  const stock = stockFor(thing.item, terms);
  const toBuy = thing.need - freeOf(stock);
  return {
    ...{ thing, stock, ways, substitutes },
    toBuy: toBuy > NOISE ? toBuy : 0,
    held: list.held.find(({ item }) => stockKey(item) === key)?.quantity ?? null,
    allowed: own !== undefined ? [own] : inTime.length > 0 ? inTime : ways,
    chosenGone: chosen !== undefined && own === undefined ? chosen.supplierId : null,
  };
}

/** Freight as the jobs know it: what is bought together is sent together, so the largest is paid once. */
function ownFreight(needs: readonly (WorkNeeds | null)[]): number | null {
  const known = needs.flatMap((one) => (one === null || one.blanks.length === 0 ? [] : (one.freight ?? [])));
  return known.length === 0 ? null : Math.max(...known);
}

function termsOf(
  supplierId: string | null,
  freight: number | null,
  { suppliers, currency }: BuyingTerms,
): BasketTerms {
  const minor = (amount: number | null) => (amount === null ? null : toMinor(amount, currency));
  if (supplierId === null) return { freightMinor: minor(freight), freeFromMinor: null, minimumMinor: null };
  const supplier = suppliers.find(({ id }) => id === supplierId)?.supplier;
  return {
    freightMinor: minor(supplier?.freight ?? null),
    freeFromMinor: minor(supplier?.freeFreightFrom ?? null),
    minimumMinor: minor(supplier?.minimumOrder ?? null),
  };
}

function rowOf(weighed: Weighed, purchase: Purchase | null, currency: string): BuyingRow {
  const { thing, stock, toBuy, held, ways, substitutes } = weighed;
  const { item, name, unit, good, need, expected, chance, byWork } = thing;
  const bought = purchase?.quantity ?? 0;
  const left = Math.max(0, freeOf(stock) + bought - expected);
  const each = purchase?.each ?? thing.own?.price.each ?? ways[0]?.tiers[0]?.each ?? null;
  const wanted = held ?? toBuy;
  const asBought = (some: readonly Way[]) =>
    wanted > 0
      ? some.map((way) => bestPurchase(way, wanted, currency, held !== null)).sort(cheapestInTime)
      : [];
  const isLacking = purchase === null || purchase.supplierId === null || purchase.inTime === false;
  return {
    ...{ item, name, unit, good, need, expected, chance, byWork, stock, toBuy, held, purchase, left },
    chanceWithAll: null,
    offers: asBought(ways),
    substitutes: isLacking || stockKey(purchase.item) !== stockKey(item) ? asBought(substitutes) : [],
    leftWorthMinor: left === 0 ? 0 : each === null ? null : toMinor(left * each, currency),
  };
}

const cheapestInTime = (one: Purchase, other: Purchase): number =>
  Number(one.inTime === false) - Number(other.inTime === false) ||
  (one.amountMinor ?? 0) - (other.amountMinor ?? 0);
