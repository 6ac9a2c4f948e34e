import type { Pile } from '@/lib/stock/foldStock';
import type { StockEntry } from '@/lib/stock/stockEntry';
import { addDays, daysBetween } from '@/shared/days';
import type { Entry } from '@/shared/schemas/happened';
import type { Shop } from '@/shared/schemas/shop';
import type { StallGoods } from '@/shared/schemas/stallDay';
import type { ShopPayment, ShopPrice, ShopStatement } from '@/shared/schemas/stallEvents';
import type { StockGrade, StockMove } from '@/shared/schemas/stock';
import { outSince } from './outSince';
import { shelfKey } from './shelfKey';
import { shopNames } from './shopNames';
import { ofShop, type ToldPrices, toldPrices } from './toldPrices';

/** What was noted of shops and their goods, all in force. */
interface ShopNoted {
  readonly piles: readonly Pile[];
  readonly statements: readonly Entry<'shopStatement', ShopStatement>[];
  readonly prices: readonly Entry<'shopPrice', ShopPrice>[];
  readonly payments: readonly Payment[];
  /** In order. */
  readonly stock: readonly StockEntry[];
}

type Payment = Entry<'shopPayment', ShopPayment>;

/** Money of one currency, whole minor units. */
interface Sum {
  readonly currency: string;
  readonly minor: number;
}

/** Some goods on a shop's shelf. */
export interface ShelfGoods extends StallGoods {
  readonly grade: StockGrade;
  /** Below 0 where more was sold than was ever brought. */
  readonly quantity: number;
  /** What the shop asks for one, as last agreed when goods were brought or told by a statement; null where neither. */
  readonly each: Sum | null;
}

/** A statement and what was paid of it. */
export interface SettledStatement {
  readonly entry: Entry<'shopStatement', ShopStatement>;
  readonly paidMinor: number;
  /** Below 0 where the shop paid more than it owed. */
  readonly openMinor: number;
  readonly payments: readonly Payment[];
  readonly state: 'open' | 'part' | 'paid' | 'over';
}

/** What all that was noted of a shop comes to. */
export interface ShopStanding {
  readonly shelf: readonly ShelfGoods[];
  /** What it asks for one, also of goods of which none lie there any more. */
  readonly prices: ToldPrices;
  readonly pieces: number;
  /** The goods at the shop's last prices, by currency; what nobody told a price of is counted in `unpriced`. */
  readonly worth: readonly Sum[];
  readonly unpriced: number;
  /** The last first. */
  readonly statements: readonly SettledStatement[];
  /** Paid for a statement that is not here, such as one another device took back: the shop has it to its credit. */
  readonly credits: readonly Payment[];
  /** By currency, those of 0 left out. */
  readonly due: readonly Sum[];
  readonly lastStatementOn: string | null;
  /** Since when goods lie there without a break, ms since 1970; null where none do. */
  readonly outSince: number | null;
}

/** Folds what was noted of one shop. */
export function shopStanding(
  shopId: string,
  shop: Pick<Shop, 'name' | 'knownAs'>,
  noted: ShopNoted,
): ShopStanding {
  const own = ofShop(shopId, noted.statements);
  const prices = toldPrices([...own, ...noted.prices.filter(({ body }) => body.shopId === shopId)]);
  const payments = noted.payments.filter(({ body }) => body.shopId === shopId);
  const statements = own.map((entry) => settled(entry, payments));
  const here = new Set(own.map(({ id }) => id));
  const credits = payments.filter(({ body }) => !here.has(body.statementId));
  const names = shopNames(shop);
  const shelf = shelfOf(names, noted.piles, prices);
  const there = shelf.filter(({ quantity }) => quantity > 0);
  const sums = there.flatMap(({ each, quantity }) =>
    each === null ? [] : [{ ...each, minor: each.minor * quantity }],
  );
  const pieces = piecesOf(there);
  return {
    ...{ shelf, prices, statements, credits, pieces, worth: byCurrency(sums) },
    unpriced: piecesOf(there.filter(({ each }) => each === null)),
    due: byCurrency([
      ...statements.map(({ entry, openMinor }) => ({ currency: entry.body.currency, minor: openMinor })),
      ...credits.map(({ body }) => ({ currency: body.currency, minor: -body.amountMinor })),
    ]),
    lastStatementOn: own[0]?.body.day ?? null,
    outSince: outSince(names, noted.stock),
  };
}

/**
 * Days by which something a shop agreed to is late; 0 on its day and before, null where nothing is agreed or nothing
 * lies there. A statement is waited for from the last one, or from when an empty shelf was filled after it.
 *
 * @param outSinceOn the day since which goods lie there; null where none do
 */
export function shopLate(
  { statementDays, fetchBy }: Pick<Shop, 'statementDays' | 'fetchBy'>,
  { pieces, lastStatementOn }: Pick<ShopStanding, 'pieces' | 'lastStatementOn'>,
  outSinceOn: string | null,
  today: string,
): { readonly statement: number | null; readonly fetch: number | null } {
  const since =
    [lastStatementOn, outSinceOn]
      .filter((day) => day !== null)
      .toSorted()
      .at(-1) ?? null;
  const late = (day: string) => Math.max(0, daysBetween(day, today));
  const isThere = pieces > 0;
  return {
    statement:
      isThere && statementDays !== null && since !== null ? late(addDays(since, statementDays)) : null,
    fetch: isThere && fetchBy !== null ? late(fetchBy) : null,
  };
}

/** @returns ids of a statement, of what it took off the shelf in the same step, and of what was paid of it. */
export function takenBackWith(
  { entry, payments }: SettledStatement,
  moves: readonly Entry<'stockMove', StockMove>[],
): readonly string[] {
  const beside = moves.filter(
    ({ device, at, body: { reference } }) =>
      device === entry.device &&
      at === entry.at &&
      reference?.kind === 'shop' &&
      reference.id === entry.body.shopId,
  );
  return [entry.id, ...[...beside, ...payments].map(({ id }) => id)];
}

// Helpers

const piecesOf = (rows: readonly ShelfGoods[]): number =>
  rows.reduce((sum, { quantity }) => sum + quantity, 0);

function shelfOf(
  names: ReadonlySet<string>,
  piles: readonly Pile[],
  told: ToldPrices,
): readonly ShelfGoods[] {
  const shelf = new Map<string, ShelfGoods>();
  for (const { item, place, grade, quantity } of piles) {
    if (item.kind !== 'finished' || place.kind !== 'shop' || !names.has(place.name)) continue;
    const { jobId, lineId, size } = item;
    const key = shelfKey(item, grade);
    const each = told.get(key) ?? null;
    const before = shelf.get(key)?.quantity ?? 0;
    shelf.set(key, { jobId, lineId, size, grade, quantity: before + quantity, each });
  }
  return [...shelf.values()].filter(({ quantity }) => quantity !== 0);
}

function settled(entry: SettledStatement['entry'], payments: readonly Payment[]): SettledStatement {
  const own = payments.filter(({ body }) => body.statementId === entry.id);
  const paidMinor = own.reduce((sum, { body }) => sum + body.amountMinor, 0);
  const openMinor = entry.body.dueMinor - paidMinor;
  const state = openMinor < 0 ? 'over' : openMinor === 0 ? 'paid' : paidMinor > 0 ? 'part' : 'open';
  return { entry, paidMinor, openMinor, state, payments: own };
}

function byCurrency(sums: readonly Sum[]): readonly Sum[] {
  const all = new Map<string, number>();
  for (const { currency, minor } of sums) all.set(currency, (all.get(currency) ?? 0) + minor);
  return [...all].filter(([, minor]) => minor !== 0).map(([currency, minor]) => ({ currency, minor }));
}
