import { stockKey } from '@/lib/stock/stockKey';
import { addDays, addWorkingDays, daysBetween } from '@/shared/days';
import { toMinor } from '@/shared/money';
import type { Supplier, SupplierOffer, SupplyItem } from '@/shared/schemas/making/supply';
import type { BuyingAsked } from './buyingAsked';
import type { Purchase } from './buyingPlan';
import type { NeededThing } from './neededThings';
import { risingTiers, tierAt } from './tierAt';

/** One way to have a thing. */
export interface Way
  extends Pick<
    Purchase,
    | 'supplierId'
    | 'offerId'
    | 'item'
    | 'articleNumber'
    | 'packSize'
    | 'priceIs'
    | 'leadWorkingDays'
    | 'orderBy'
    | 'inTime'
  > {
  /** By quantity, rising; empty where no price is known. Currency units. */
  readonly tiers: readonly { readonly from: number; readonly each: number }[];
}

/** What has to be known of the days. */
interface Days {
  readonly asOf: string;
  /** The working day on which the goods are in; null where no press is planned. */
  readonly arriveBy: string | null;
}

/** Noise of a division. */
const NOISE = 1e-9;

/**
 * @returns all ways to have a thing itself, and what suppliers offer in its place. Where no supplier offers it the job's
 *   own price stands in, without a supplier.
 */
export function waysToBuy(
  thing: NeededThing,
  suppliers: BuyingAsked['suppliers'],
  days: Days,
): { readonly ways: readonly Way[]; readonly substitutes: readonly Way[] } {
  const key = stockKey(thing.item);
  const offered = (isMeant: (offer: SupplierOffer) => boolean) =>
    suppliers.flatMap(({ id, supplier }) =>
      supplier.archivedOn === null
        ? supplier.offers.filter(isMeant).map((offer) => offeredWay(thing, id, supplier, offer, days))
        : [],
    );
  const ways = offered(({ item }) => stockKey(item) === key);
  return {
    ways: ways.length > 0 ? ways : [ownWay(thing, days)],
    substitutes: offered(
      ({ item, standsInFor }) =>
        standsInFor !== null && stockKey(standsInFor) === key && stockKey(item) !== key,
    ),
  };
}

/**
 * How much is bought so that it costs least: whole packs, and a larger quantity where its tier makes it cheaper.
 *
 * @param wanted above 0
 * @param isHeld the maker's own number: whole packs, but no more for a tier
 */
export function bestPurchase(way: Way, wanted: number, currency: string, isHeld = false): Purchase {
  const [first] = way.tiers;
  const least = Math.max(wanted, first?.from ?? 0);
  const quantities = [
    wholePacks(way, least),
    ...(isHeld ? [] : way.tiers.filter(({ from }) => from > least).map(({ from }) => wholePacks(way, from))),
  ];
  const found = quantities.map((quantity) => purchaseOf(way, quantity, currency));
  const best = found.reduce((cheapest, one) =>
    (one.amountMinor ?? 0) < (cheapest.amountMinor ?? 0) ? one : cheapest,
  );
  return best === found[0] ? best : { ...best, more: 'tier' };
}

/** @returns a quantity at its tier's price. */
export function purchaseOf(way: Way, quantity: number, currency: string): Purchase {
  const { tiers, ...told } = way;
  const each = tierAt(tiers, quantity)?.each ?? null;
  return {
    ...told,
    ...{ quantity, each, more: null },
    packs: way.packSize === null ? null : Math.round(quantity / way.packSize),
    amountMinor: each === null ? null : toMinor(each * quantity, currency),
  };
}

// Helpers

function wholePacks({ packSize }: Way, quantity: number): number {
  if (packSize === null) return quantity;
  const packs = Math.ceil(quantity / packSize - NOISE);
  // Whole packs of 0.1 are not to end in the noise of a product.
  return Number((packs * packSize).toPrecision(12));
}

function offeredWay(
  { own }: NeededThing,
  supplierId: string,
  { leadWorkingDays }: Supplier,
  offer: SupplierOffer,
  days: Days,
): Way {
  const lead = leadWorkingDays ?? own?.leadWorkingDays ?? null;
  return {
    ...{ supplierId, offerId: offer.id, item: offer.item, articleNumber: offer.articleNumber },
    ...{ packSize: offer.packSize, priceIs: 'offered', leadWorkingDays: lead },
    tiers: risingTiers(offer.tiers),
    ...timesOf(lead, days),
  };
}

function ownWay({ item, own }: NeededThing, days: Days): Way {
  const lead = own?.leadWorkingDays ?? null;
  return {
    ...{ supplierId: null, offerId: null, item, articleNumber: '', leadWorkingDays: lead },
    packSize: own === null ? wholeUnits(item) : own.packSize,
    priceIs: own === null ? 'none' : own.price.origin === 'typical' ? 'typical' : 'own',
    tiers: own === null ? [] : [{ from: 0, each: own.price.each }],
    ...timesOf(lead, days),
  };
}

const wholeUnits = ({ kind }: SupplyItem): number | null => (kind === 'blank' || kind === 'paper' ? 1 : null);

/** Ordered today, or on Monday where it is a weekend. */
function timesOf(lead: number | null, { asOf, arriveBy }: Days): Pick<Way, 'orderBy' | 'inTime'> {
  if (lead === null || arriveBy === null) return { orderBy: null, inTime: null };
  const orderBy = addWorkingDays(arriveBy, -lead);
  const firstDay = addWorkingDays(addDays(asOf, -1), 1);
  return { orderBy, inTime: daysBetween(firstDay, orderBy) >= 0 };
}
