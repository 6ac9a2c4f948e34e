import { closeInForce } from '@/lib/stall/closeInForce';
import { goodsKey } from '@/lib/stall/goodsKey';
import type { StallGoods } from '@/shared/schemas/stallDay';
import type { StockMove } from '@/shared/schemas/stock';
import type { CarStock } from './carMoves';
import { isOf, loadedFor, takenFrom } from './dayMoves';
import { asNoted, type Closed, openLoads } from './openLoads';

/** Pieces of first grade that a closed day left in the car, for nobody counted them. */
export interface LeftInCar extends StallGoods {
  readonly stallDayId: string;
  /** As its close calls it. */
  readonly title: string;
  /** 1 or more. */
  readonly pieces: number;
}

/**
 * What closed days left in the car and no other day took along since, the day that was loaded first before the others.
 * It is never more than lies in the car beside what open days loaded, so that a count of the car goes before it.
 */
export function leftInCar({ piles, moves }: CarStock, closed: Closed): readonly LeftInCar[] {
  const dayOf = daysOfMoves(closed);
  const left = new Map<string, LeftInCar>();
  for (const { body } of asNoted(moves)) {
    const { item, place, grade, quantity } = body;
    if (item.kind !== 'finished' || place.kind !== 'van' || grade !== 'first') continue;
    const stallDayId = dayOf(body);
    const close = stallDayId === null ? null : closeInForce(closed.dayClose, stallDayId);
    if (stallDayId === null || close === null) continue;
    const key = `${stallDayId} ${goodsKey(item)}`;
    const pieces = (left.get(key)?.pieces ?? 0) + quantity;
    const { jobId, lineId, size } = item;
    left.set(key, { jobId, lineId, size, stallDayId, title: close.body.title, pieces });
  }
  return withinCar([...left.values()], piles, openLoads(moves, closed));
}

// Helpers

/** @returns reads the day that a move is of: loaded for it, booked by a close of it, or taken along from it */
function daysOfMoves({ dayClose }: Closed): (body: StockMove) => string | null {
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
  loads: ReturnType<typeof openLoads>,
): readonly LeftInCar[] {
  const room = new Map<string, number>();
  const roomOf = (goods: LeftInCar): number => {
    const lying = piles.find(
      ({ item, place, grade }) => place.kind === 'van' && grade === 'first' && isOf(item, goods),
    );
    const open = [...(loads.get(goodsKey(goods))?.values() ?? [])];
    return (lying?.quantity ?? 0) - open.reduce((sum, { pieces }) => sum + Math.max(0, pieces), 0);
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
