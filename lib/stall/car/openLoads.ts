import { closeInForce, type DayPaper } from '@/lib/stall/closeInForce';
import { goodsKey } from '@/lib/stall/goodsKey';
import type { DayClose } from '@/shared/schemas/stallPapers';
import type { CarStock } from './carMoves';
import { loadedFor } from './dayMoves';

/** What lies in the car for one stall day, pieces of first grade. */
interface Load {
  readonly stallDayId: string;
  readonly pieces: number;
}

/** What closes of stall days say. */
export interface Closed {
  readonly dayClose: readonly DayPaper<'dayClose', DayClose>[];
}

/** @returns what lies in the car by goods and day, the day that was loaded first before the others; closed days are left out */
export function openLoads(
  moves: CarStock['moves'],
  { dayClose }: Closed,
): ReadonlyMap<string, ReadonlyMap<string, Load>> {
  const loads = new Map<string, Map<string, Load>>();
  for (const { body } of asNoted(moves)) {
    const stallDayId = loadedFor(body);
    const { item, place, grade, quantity } = body;
    if (stallDayId === null || item.kind !== 'finished' || place.kind !== 'van' || grade !== 'first')
      continue;
    if (closeInForce(dayClose, stallDayId) !== null) continue;
    const key = goodsKey(item);
    const days = loads.get(key) ?? new Map<string, Load>();
    const pieces = (days.get(stallDayId)?.pieces ?? 0) + quantity;
    loads.set(key, days.set(stallDayId, { stallDayId, pieces }));
  }
  return loads;
}

/** @returns moves as they were noted, one after the other */
export const asNoted = (moves: CarStock['moves']): CarStock['moves'] =>
  moves.toSorted((one, other) => one.at - other.at || (one.id < other.id ? -1 : 1));
