import type { Purchase } from './buyingPlan';
import { type Basket, type BasketTerms, type FilledBasket, fillBasket } from './fillBasket';
import { bestPurchase, type Way } from './waysToBuy';

/** A thing that is to be bought and the ways to have it. */
export interface ToBuy {
  /** Above 0. */
  readonly quantity: number;
  readonly isHeld: boolean;
  /** One at least. */
  readonly ways: readonly Way[];
}

export interface Choice {
  /** By thing, in the order given. */
  readonly purchases: readonly Purchase[];
  readonly baskets: readonly FilledBasket[];
  readonly totalMinor: number;
  /** How much dearer it may be than the cheapest; 0 where nothing is cheaper. */
  readonly dearerAtMostMinor: number;
}

/** Every way to use so many suppliers is looked at. */
const MOST_SUPPLIERS = 6;
/** Sharings of things among the same suppliers that are looked at; beyond them the gap is told. */
const MOST_SHARINGS = 20_000;

/**
 * The suppliers that cost least together, freight and least orders in it: for every set of suppliers each thing where it
 * costs least, and elsewhere where that makes freight free or an order large enough.
 *
 * @param termsOf freight and least order of a supplier; null for what no supplier is known of
 */
export function chooseSuppliers(
  things: readonly ToBuy[],
  termsOf: (supplierId: string | null) => BasketTerms,
  currency: string,
): Choice {
  const asked = things.map((thing) => ({ isHeld: thing.isHeld, options: optionsOf(thing, currency) }));
  const ids = [...new Set(asked.flatMap(({ options }) => options.map(({ way }) => way.supplierId)))];
  const search: Search = { asked, termsOf, currency, best: null, open: null };
  for (const set of setsToTry(ids, asked)) tryMost(search, set);
  if (ids.length > MOST_SUPPLIERS) {
    shrink(search, ids);
    search.open = Math.min(search.open ?? Number.POSITIVE_INFINITY, floorOf(search, ids));
  }
  const { best } = search;
  if (best === null) return { purchases: [], baskets: [], totalMinor: 0, dearerAtMostMinor: 0 };
  return {
    ...best,
    dearerAtMostMinor: search.open === null ? 0 : Math.max(0, best.totalMinor - search.open),
  };
}

// Helpers

interface Option {
  readonly way: Way;
  readonly purchase: Purchase;
  readonly minor: number;
}

interface Asked {
  readonly isHeld: boolean;
  /** The cheapest first. One supplier may have several: a dearer one fills an order in other steps. */
  readonly options: readonly Option[];
}

interface Search {
  readonly asked: readonly Asked[];
  readonly termsOf: (supplierId: string | null) => BasketTerms;
  readonly currency: string;
  best: (Omit<Choice, 'dearerAtMostMinor'> & { readonly rankMinor: number }) | null;
  /** The least that anything not looked at could cost; null where all was. */
  open: number | null;
}

type Ids = readonly (string | null)[];

function optionsOf({ ways, quantity, isHeld }: ToBuy, currency: string): readonly Option[] {
  return ways
    .map((way) => ({ way, purchase: bestPurchase(way, quantity, currency, isHeld) }))
    .map((one) => ({ ...one, minor: one.purchase.amountMinor ?? 0 }))
    .sort((one, other) => one.minor - other.minor || one.purchase.quantity - other.purchase.quantity);
}

/** @returns every set of suppliers that has all things, the smallest first; all together where there are too many. */
function setsToTry(ids: Ids, asked: readonly Asked[]): readonly Ids[] {
  if (ids.length > MOST_SUPPLIERS) return [ids];
  const sets = Array.from({ length: 2 ** ids.length }, (_, bits) =>
    ids.filter((_id, at) => (bits >> at) & 1),
  );
  return sets
    .filter((set) => asked.every(({ options }) => options.some(({ way }) => set.includes(way.supplierId))))
    .sort((one, other) => one.length - other.length);
}

/** Leaves out one supplier after the other for as long as that costs less. */
function shrink(search: Search, ids: Ids): void {
  let used = ids;
  for (let isBetter = true; isBetter; ) {
    const before = search.best?.rankMinor ?? 0;
    const smaller = used
      .map((id) => used.filter((one) => one !== id))
      .filter((set) =>
        search.asked.every(({ options }) => options.some(({ way }) => set.includes(way.supplierId))),
      );
    for (const set of smaller) tryMost(search, set);
    isBetter = (search.best?.rankMinor ?? 0) < before;
    used = search.best?.baskets.map(({ supplierId }) => supplierId) ?? used;
  }
}

/** Each thing at its cheapest, and freight free wherever that can be reached at all. */
const floorOf = ({ asked }: Search, set: Ids): number =>
  asked.reduce((sum, { options }) => sum + (optionsIn(options, set)[0]?.minor ?? 0), 0);

const optionsIn = (options: readonly Option[], set: Ids): readonly Option[] =>
  options.filter(({ way }) => set.includes(way.supplierId));

/** Shares the things among a set of suppliers, those with one choice first, and keeps the cheapest sharing. */
function tryMost(search: Search, set: Ids): void {
  const order = search.asked
    .map(({ options }, at) => ({ at, options: optionsIn(options, set) }))
    .sort((one, other) => one.options.length - other.options.length);
  // What the things from a place on cost at least, and what they can come to at most with each supplier.
  const rest = order.map((_, from) =>
    order.slice(from).reduce((sum, { options }) => sum + (options[0]?.minor ?? 0), 0),
  );
  const most = order.map((_, from) =>
    set.map((id) =>
      order
        .slice(from)
        .reduce(
          (sum, { options }) => sum + (options.findLast(({ way }) => way.supplierId === id)?.minor ?? 0),
          0,
        ),
    ),
  );
  const chosen: Option[] = [];
  const goods = set.map(() => 0);
  let looks = 0;
  const floor = (from: number) =>
    set.reduce((sum, id, index) => {
      const reach = (goods[index] ?? 0) + (most[from]?.[index] ?? 0);
      return sum + (goods[index] ?? 0) + extraAtLeast(search.termsOf(id), reach);
    }, rest[from] ?? 0);
  const walk = (from: number): void => {
    const bound = floor(from);
    if (search.best !== null && bound >= search.best.rankMinor) return;
    if (from === order.length) {
      keep(
        search,
        order.map(({ at }, index) => ({ at, option: chosen[index] })),
      );
      return;
    }
    looks += 1;
    if (looks > MOST_SHARINGS) {
      search.open = Math.min(search.open ?? Number.POSITIVE_INFINITY, bound);
      return;
    }
    for (const option of order[from]?.options ?? []) {
      const index = set.indexOf(option.way.supplierId);
      chosen[from] = option;
      goods[index] = (goods[index] ?? 0) + option.minor;
      walk(from + 1);
      goods[index] = (goods[index] ?? 0) - option.minor;
    }
  };
  walk(0);
}

/**
 * @returns what freight and a least order add at least where the goods can come to `reach`. All of a set are used: those
 *   that leave one out are another set's.
 */
function extraAtLeast({ freightMinor, freeFromMinor, minimumMinor }: BasketTerms, reach: number): number {
  const freight = freightMinor ?? 0;
  const short = Math.max(0, (minimumMinor ?? 0) - reach);
  const toFree = freeFromMinor === null ? freight : Math.max(0, freeFromMinor - reach);
  return Math.max(short, Math.min(freight + short, toFree));
}

function keep(search: Search, chosen: readonly { at: number; option: Option | undefined }[]): void {
  const baskets = new Map<string | null, Basket['things'][number][]>();
  for (const { at, option } of chosen) {
    if (option === undefined) return;
    const { way, purchase } = option;
    const things = baskets.get(way.supplierId) ?? [];
    things.push({ at, way, purchase, isHeld: search.asked[at]?.isHeld ?? false });
    baskets.set(way.supplierId, things);
  }
  const fill = (isMixed: boolean) =>
    [...baskets].map(([supplierId, things]) =>
      fillBasket({ supplierId, things, terms: search.termsOf(supplierId) }, search.currency, isMixed),
    );
  const quick = fill(false);
  const mostSpared = overOf(quick);
  if (search.best !== null && rankOf(quick) - mostSpared >= search.best.rankMinor) return;
  const filled = mostSpared === 0 ? quick : fill(true);
  const over = overOf(filled);
  const rankMinor = rankOf(filled);
  if (over > 0) search.open = Math.min(search.open ?? Number.POSITIVE_INFINITY, rankMinor - over);
  if (search.best !== null && rankMinor >= search.best.rankMinor) return;
  const totalMinor = totalOf(filled);
  const purchases: Purchase[] = [];
  for (const { things } of filled) for (const { at, purchase } of things) purchases[at] = purchase;
  search.best = { purchases, baskets: filled, totalMinor, rankMinor };
}

const totalOf = (filled: readonly FilledBasket[]): number =>
  filled.reduce((sum, one) => sum + one.goodsMinor + (one.freightMinor ?? 0), 0);

/** What is short of a least order counts as if it were paid: the supplier asks for it. */
const rankOf = (filled: readonly FilledBasket[]): number =>
  filled.reduce((sum, { shortMinor }) => sum + shortMinor, totalOf(filled));

const overOf = (filled: readonly FilledBasket[]): number =>
  filled.reduce((sum, { overMinor }) => sum + overMinor, 0);
