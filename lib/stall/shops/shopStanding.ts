import type { Pile } from '@/lib/stock/foldStock';
import { addDays, daysBetween } from '@/shared/days';
import type { Entry } from '@/shared/schemas/happened';
import type { Shop } from '@/shared/schemas/shop';
import type { StallGoods } from '@/shared/schemas/stallDay';
import type { ShopPayment, ShopStatement } from '@/shared/schemas/stallEvents';
import type { StockMove, StockTransfer } from '@/shared/schemas/stock';

/** What was noted of shops and their goods, all in force. */
interface ShopNoted {
  readonly piles: readonly Pile[];
  readonly statements: readonly Entry<'shopStatement', ShopStatement>[];
  readonly payments: readonly Entry<'shopPayment', ShopPayment>[];
  readonly transfers: readonly Entry<'stockTransfer', StockTransfer>[];
}

/** Some goods on a shop's shelf. */
export interface ShelfGoods extends StallGoods {
  readonly grade: 'first' | 'second';
  /** Below 0 where more was sold than was ever brought. */
  readonly quantity: number;
  /** What the shop asked by its last statement, whole minor units; null where none told. */
  readonly eachMinor: number | null;
}

/** A statement and what was paid of it. */
export interface SettledStatement {
  readonly entry: Entry<'shopStatement', ShopStatement>;
  readonly paidMinor: number;
  /** Below 0 where the shop paid more than it owed. */
  readonly openMinor: number;
  readonly paymentIds: readonly string[];
  readonly state: 'open' | 'part' | 'paid' | 'over';
}

/** What all that was noted of a shop comes to. */
export interface ShopStanding {
  readonly shelf: readonly ShelfGoods[];
  readonly pieces: number;
  /** The goods at the shop's last prices, whole minor units; what it never told a price of is counted in `unpriced`. */
  readonly worthMinor: number;
  readonly unpriced: number;
  /** The last first. */
  readonly statements: readonly SettledStatement[];
  /** By currency, those of 0 left out. */
  readonly due: readonly { readonly currency: string; readonly minor: number }[];
  readonly lastStatementOn: string | null;
  /** When goods first went there, ms since 1970. */
  readonly firstOutAt: number | null;
}

/** Folds what was noted of one shop. */
export function shopStanding(shopId: string, { name }: Pick<Shop, 'name'>, noted: ShopNoted): ShopStanding {
  const own = noted.statements
    .filter(({ body }) => body.shopId === shopId)
    .toSorted((a, b) => daysBetween(a.body.day, b.body.day) || b.at - a.at || b.count - a.count);
  const statements = own.map((entry) => settled(entry, noted.payments));
  const shelf = shelfOf(name, noted.piles, own);
  const priced = shelf.filter(({ eachMinor }) => eachMinor !== null);
  const sum = (rows: readonly ShelfGoods[], of: (row: ShelfGoods) => number) =>
    rows.reduce((all, row) => all + Math.max(0, row.quantity) * of(row), 0);
  const outs = noted.transfers.filter(({ body: { to } }) => isAt(to.place, name)).map(({ at }) => at);
  const pieces = sum(shelf, () => 1);
  return {
    ...{ shelf, statements, pieces, due: dueOf(statements) },
    worthMinor: sum(priced, ({ eachMinor }) => eachMinor ?? 0),
    unpriced: pieces - sum(priced, () => 1),
    lastStatementOn: own[0]?.body.day ?? null,
    firstOutAt: outs.length === 0 ? null : Math.min(...outs),
  };
}

/**
 * Days by which something a shop agreed to is late; 0 on its day and before, null where nothing is agreed or nothing
 * lies there.
 *
 * @param firstOutOn the day goods first went there; null where none did
 */
export function shopLate(
  { statementDays, fetchBy }: Pick<Shop, 'statementDays' | 'fetchBy'>,
  { pieces, lastStatementOn }: Pick<ShopStanding, 'pieces' | 'lastStatementOn'>,
  firstOutOn: string | null,
  today: string,
): { readonly statement: number | null; readonly fetch: number | null } {
  const since = lastStatementOn ?? firstOutOn;
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
  { entry, paymentIds }: SettledStatement,
  moves: readonly Entry<'stockMove', StockMove>[],
): readonly string[] {
  const beside = moves.filter(
    ({ device, at, body: { reference } }) =>
      device === entry.device &&
      at === entry.at &&
      reference?.kind === 'shop' &&
      reference.id === entry.body.shopId,
  );
  return [entry.id, ...beside.map(({ id }) => id), ...paymentIds];
}

// Helpers

const isAt = (place: Pile['place'], name: string): boolean => place.kind === 'shop' && place.name === name;

function shelfOf(
  name: string,
  piles: readonly Pile[],
  statements: ShopNoted['statements'],
): readonly ShelfGoods[] {
  const rows = statements.flatMap(({ body }) => body.rows);
  return piles.flatMap(({ item, place, grade, quantity }) => {
    if (item.kind !== 'finished' || !isAt(place, name) || quantity === 0) return [];
    const { jobId, lineId, size } = item;
    const told = rows.find(
      ({ goods, eachMinor }) =>
        goods.jobId === jobId && goods.lineId === lineId && goods.size === size && eachMinor > 0,
    );
    return [{ jobId, lineId, size, grade, quantity, eachMinor: told?.eachMinor ?? null }];
  });
}

function settled(entry: SettledStatement['entry'], payments: ShopNoted['payments']): SettledStatement {
  const own = payments.filter(({ body }) => body.statementId === entry.id);
  const paidMinor = own.reduce((sum, { body }) => sum + body.amountMinor, 0);
  const openMinor = entry.body.dueMinor - paidMinor;
  const state = openMinor < 0 ? 'over' : openMinor === 0 ? 'paid' : paidMinor > 0 ? 'part' : 'open';
  return { entry, paidMinor, openMinor, state, paymentIds: own.map(({ id }) => id) };
}

function dueOf(statements: readonly SettledStatement[]): ShopStanding['due'] {
  const due = new Map<string, number>();
  for (const { entry, openMinor } of statements)
    due.set(entry.body.currency, (due.get(entry.body.currency) ?? 0) + openMinor);
  return [...due].filter(([, minor]) => minor !== 0).map(([currency, minor]) => ({ currency, minor }));
}
