import { byGoods } from '@/lib/stall/byGoods';
import { carNet, loadedFor, movesByGoods, type NotedMove, takenFrom } from '@/lib/stall/car/dayMoves';
import { goodsKey } from '@/lib/stall/goodsKey';
import type { Pile } from '@/lib/stock/foldStock';
import { isReady } from '@/lib/stock/isReady';
import type { StallGoods } from '@/shared/schemas/stallDay';
import type { StockCause, StockGrade, StockMove } from '@/shared/schemas/stock';
import { firstsSold } from './firstsSold';
import type { StockRow } from './stockRows';

/** What a close says of some goods, pieces. */
export type ClosedRow = Pick<StockRow, 'brought' | 'sold' | 'given' | 'damaged' | 'seconds' | 'counted'> & {
  readonly goods: StallGoods;
  /** Of the sold, seconds kept from before that came along. */
  readonly keptSold?: number;
};

/** What a close says, as its paper keeps it. */
type ClosedGoods = StallGoods & Omit<ClosedRow, 'goods'>;

/** @returns every row that a close books: goods of a plan, and those that no plan names */
export const closedRows = (close: {
  readonly goods: readonly ClosedGoods[];
  readonly strays?: readonly ClosedGoods[];
}): readonly ClosedRow[] => [...close.goods, ...(close.strays ?? [])].map((goods) => ({ ...goods, goods }));

/** What a close of a day is booked against. */
export interface CloseStock {
  readonly stallDayId: string;
  /** All moves of stock in force. */
  readonly moves: readonly NotedMove[];
  readonly piles: readonly Pile[];
  /** All closes of the day, those that were withdrawn too. */
  readonly closes: readonly { readonly id: string; readonly withdrawn: boolean }[];
}

/**
 * What a close does to the stock: what was sold, given or spoiled leaves the car, what is left comes home, seconds in
 * their own grade. It is what the day should have moved in all less what its loads and earlier closes moved already, so
 * that a correction books its difference alone, what was never loaded is taken from home, what was loaded twice goes
 * back, and what other days have in the same car stays there.
 *
 * Goods that were loaded for the day or booked by an earlier close of it and that no row names come home: they were not
 * along. What was brought and is nowhere noted is booked as made, by the first close alone. Of goods of which nobody ever
 * noted anything only what was counted comes home. Goods that were not counted stay in the car until
 * another day takes them along.
 *
 * @param paperId the close itself, by which its moves are found again
 */
export function closeMoves(
  rows: readonly ClosedRow[],
  stock: CloseStock,
  paperId: string,
): readonly StockMove[] {
  const day = dayOf(stock);
  const movesOfGoods = movesByGoods(day.own);
  const lying = byGoods(day.piles, ({ item }) => item);
  return [...rows, ...unnamed(rows, day)].flatMap((row) => {
    const ofGoods = { ...day, own: movesOfGoods(row.goods), piles: lying(row.goods) };
    return movesOf(row, ofGoods, paperId);
  });
}

/**
 * @param close the one in force
 * @returns whether the day moved something else than its close says: two devices closed it before they met
 */
export const isBookedTwice = (close: Parameters<typeof closedRows>[0], stock: CloseStock): boolean =>
  closeMoves(closedRows(close), stock, 'asked').length > 0;

// Helpers

interface DayBooked {
  /** What was moved for the day so far, and of what it left in the car. */
  readonly own: readonly NotedMove[];
  readonly piles: readonly Pile[];
  readonly isCorrection: boolean;
  /** When the first close was booked, ms since 1970; null where none moved anything. */
  readonly closedAt: number | null;
}

type Booking = readonly [place: 'home' | 'van', grade: StockGrade, cause: StockCause, quantity: number];

function dayOf({ stallDayId, moves, piles, closes }: CloseStock): DayBooked {
  const ids = new Set(closes.map(({ id }) => id));
  const isBooked = ({ body: { reference } }: NotedMove) =>
    reference?.kind === 'paper' && ids.has(reference.id);
  const own = moves.filter(
    (move) => loadedFor(move.body) === stallDayId || takenFrom(move.body) === stallDayId || isBooked(move),
  );
  const booked = own.filter(isBooked);
  return {
    own,
    piles,
    isCorrection: closes.some(({ withdrawn }) => !withdrawn),
    closedAt: booked.length === 0 ? null : Math.min(...booked.map(({ at }) => at)),
  };
}

const NONE = { brought: 0, sold: 0, given: 0, damaged: 0, seconds: 0, counted: 0 } as const;

function unnamed(rows: readonly ClosedRow[], { own }: DayBooked): readonly ClosedRow[] {
  const named = new Set(rows.map(({ goods }) => goodsKey(goods)));
  const found = new Map<string, ClosedRow>();
  for (const { item } of own.map(({ body }) => body)) {
    if (item.kind !== 'finished' || named.has(goodsKey(item))) continue;
    const { jobId, lineId, size } = item;
    found.set(goodsKey(item), { ...NONE, goods: { jobId, lineId, size } });
  }
  return [...found.values()];
}

/** @param day of the goods of the row alone, and so in all that follows */
function movesOf(row: ClosedRow, day: DayBooked, paperId: string): readonly StockMove[] {
  const { jobId, lineId, size } = row.goods;
  return wantedOf(row, day).flatMap(([place, grade, cause, wanted]): readonly StockMove[] => {
    const quantity = wanted - bookedOf(day.own, place, grade, cause);
    if (quantity === 0 || isCountedSince(day, place, grade)) return [];
    return [
      {
        ...{ item: { kind: 'finished', jobId, lineId, size }, place: { kind: place }, grade },
        ...{ quantity, cause, reference: { kind: 'paper', id: paperId }, unitCost: null },
      },
    ];
  });
}

/** What the day moves in all, its loads among it. */
function wantedOf(row: ClosedRow, day: DayBooked): readonly Booking[] {
  const { brought, given, damaged, seconds, counted, keptSold = 0 } = row;
  const sold = firstsSold(row);
  const back = counted ?? 0;
  if (!isKnown(row, day)) {
    return [
      ['home', 'first', 'returned', back],
      ['home', 'second', 'returned', seconds - keptSold],
      ['van', 'second', 'returned', keptSold],
      ['van', 'second', 'sold', -keptSold],
    ];
  }
  const missing = counted === null ? 0 : brought - sold - given - damaged - back;
  const stray = Math.max(0, -missing);
  // Counted after all, they came home already.
  const taken = counted === null ? 0 : takenOf(day.own);
  return [
    ['home', 'first', 'made', madeOf(row, day)],
    ['van', 'first', 'sold', -Math.max(0, sold)],
    ['van', 'first', 'given', -given],
    ['van', 'first', 'scrapped', -damaged],
    ['van', 'first', 'lost', -Math.max(0, missing)],
    // Fewer than none are sold where a piece of an earlier fair came back.
    ['van', 'first', 'returned', brought - back + stray + Math.max(0, -sold) + taken],
    ['home', 'first', 'returned', back - brought - taken],
    // Those that were loaded and did not sell come home; the load is among these.
    ['home', 'second', 'returned', seconds - keptSold],
    ['van', 'second', 'returned', keptSold],
    ['van', 'second', 'sold', -keptSold],
  ];
}

/** Once a day was closed goods stay as known as they were then: what came home must not look as if it had been noted. */
const isKnown = ({ goods }: ClosedRow, { own, piles, isCorrection }: DayBooked) =>
  carNet(own, goods) !== null || (!isCorrection && piles.some(isReady));

/**
 * Pressed overnight, or before and never noted: whatever was brought was there. What home is short of for another day
 * that is loaded is not made by this one.
 */
function madeOf({ goods, brought }: ClosedRow, { own, piles, isCorrection }: DayBooked) {
  if (isCorrection) {
    const byClose = new Map<string, number>();
    for (const { body } of own) {
      if (body.cause !== 'made' || body.reference === null) continue;
      byClose.set(body.reference.id, (byClose.get(body.reference.id) ?? 0) + body.quantity);
    }
    return Math.max(0, ...byClose.values());
  }
  const lying = piles.filter(({ grade }) => grade === 'first');
  const at = (place: 'home' | 'van') => lying.find((pile) => pile.place.kind === place)?.quantity ?? 0;
  const loaded = carNet(own, goods) ?? 0;
  const ofOthers = Math.max(0, at('van') - loaded);
  return Math.max(0, brought - loaded - at('home') - ofOthers);
}

/** Pieces that another day took along from what this one left in the car. */
const takenOf = (own: readonly NotedMove[]): number =>
  own
    .filter(({ body }) => takenFrom(body) !== null && body.place.kind === 'home')
    .reduce((sum, { body }) => sum + body.quantity, 0);

const bookedOf = (own: readonly NotedMove[], ...[place, grade, cause]: [string, StockGrade, StockCause]) =>
  own.reduce(
    (sum, { body }) =>
      body.place.kind === place && body.grade === grade && body.cause === cause ? sum + body.quantity : sum,
    0,
  );

/** Somebody who counted at home after the close has counted what came home by it. */
const isCountedSince = ({ piles, closedAt }: DayBooked, place: 'home' | 'van', grade: StockGrade): boolean =>
  closedAt !== null &&
  place === 'home' &&
  piles.some(
    (pile) =>
      pile.place.kind === 'home' &&
      pile.grade === grade &&
      pile.counted !== null &&
      pile.counted.at > closedAt,
  );
