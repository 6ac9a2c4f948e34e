import { byGoods } from '@/lib/stall/byGoods';
import { closesInForce, type DayPaper } from '@/lib/stall/closeInForce';
import { goodsKey } from '@/lib/stall/goodsKey';
import type { StallGoods } from '@/shared/schemas/stallDay';
import type { DayClose } from '@/shared/schemas/stallPapers';
import type { StockMove } from '@/shared/schemas/stock';
import type { CarStock } from './carMoves';
import { loadedFor, takenFrom } from './dayMoves';

/** What closes of stall days say. */
export interface Closed {
  readonly dayClose: readonly DayPaper<'dayClose', DayClose>[];
}

/** What lies in the car for one stall day that is not closed, pieces of first grade. */
interface Load {
  readonly stallDayId: string;
  readonly pieces: number;
}

/** Pieces of first grade that a closed day left in the car, for nobody counted them. */
export interface LeftInCar extends StallGoods {
  readonly stallDayId: string;
  /** As its close calls it. */
  readonly title: string;
  /** 1 or more. */
  readonly pieces: number;
}

/** What the car holds of first grade, day by day. */
export interface CarHeld {
  /** What open days loaded, by `goodsKey` and day, the day that was loaded first before the others. */
  readonly open: ReadonlyMap<string, ReadonlyMap<string, Load>>;
  /**
   * What closed days left there and no other day took along since, the day that was loaded first before the others. It
   * is never more than lies in the car beside what open days loaded, so that a count of the car goes before it.
   */
  readonly left: readonly LeftInCar[];
}

/** Reads all moves once: a fair of a hundred goods has some six hundred of them, and years of fairs stand here. */
export function carHeld({ piles, moves }: CarStock, { dayClose }: Closed): CarHeld {
  const closes = closesInForce(dayClose);
  const dayOf = daysOfMoves(dayClose);
  const open = new Map<string, Map<string, Load>>();
  const left = new Map<string, LeftInCar>();
  for (const { body } of asNoted(moves)) {
    const { item, quantity } = body;
    const stallDayId = dayOf(body);
    if (item.kind !== 'finished' || stallDayId === null) continue;
    const key = goodsKey(item);
    const close = closes.get(stallDayId);
    if (close !== undefined) {
      const ofDay = `${stallDayId} ${key}`;
      const pieces = (left.get(ofDay)?.pieces ?? 0) + quantity;
      const { jobId, lineId, size } = item;
      left.set(ofDay, { jobId, lineId, size, stallDayId, title: close.body.title, pieces });
    } else if (loadedFor(body) !== null) {
      const days = open.get(key) ?? new Map<string, Load>();
      const pieces = (days.get(stallDayId)?.pieces ?? 0) + quantity;
      open.set(key, days.set(stallDayId, { stallDayId, pieces }));
    }
  }
  return { open, left: withinCar([...left.values()], piles, open) };
}

// Helpers

/** Pieces of first grade that came into the car or left it, one after the other. */
const asNoted = (moves: CarStock['moves']): CarStock['moves'] =>
  moves
    .filter(
      ({ body: { item, place, grade } }) =>
        item.kind === 'finished' && place.kind === 'van' && grade === 'first',
    )
    .sort((one, other) => one.at - other.at || (one.id < other.id ? -1 : 1));

/** @returns reads the day that a move is of: loaded for it, booked by a close of it, or taken along from it */
function daysOfMoves(dayClose: Closed['dayClose']): (body: StockMove) => string | null {
  const days = new Map(dayClose.map(({ id, body }) => [id, body.stallDayId]));
  return (body) =>
    loadedFor(body) ??
    takenFrom(body) ??
    (body.reference?.kind === 'paper' ? (days.get(body.reference.id) ?? null) : null);
}

/** What was left last is there first: what is missing in the car went with the days before. */
function withinCar(
  left: readonly LeftInCar[],
  piles: CarStock['piles'],
  open: CarHeld['open'],
): readonly LeftInCar[] {
  const lyingOf = byGoods(
    piles.filter(({ place, grade }) => place.kind === 'van' && grade === 'first'),
    ({ item }) => item,
  );
  const room = new Map<string, number>();
  const roomOf = (goods: LeftInCar): number => {
    const loads = [...(open.get(goodsKey(goods))?.values() ?? [])];
    const loaded = loads.reduce((sum, { pieces }) => sum + Math.max(0, pieces), 0);
    return (lyingOf(goods)[0]?.quantity ?? 0) - loaded;
  };
  return left
    .toReversed()
    .map((goods) => {
      const key = goodsKey(goods);
      const free = room.get(key) ?? roomOf(goods);
      const pieces = Math.max(0, Math.min(goods.pieces, free));
      room.set(key, free - pieces);
      return { ...goods, pieces };
    })
    .toReversed()
    .filter(({ pieces }) => pieces > 0);
}
