import { type CarStock, carMoves } from '@/lib/stall/car/carMoves';
import { goodsKey } from '@/lib/stall/goodsKey';
import type { Pile } from '@/lib/stock/foldStock';
import type { StallGoods } from '@/shared/schemas/stallDay';
import type { StockMove } from '@/shared/schemas/stock';
import type { ToPress } from './toPress';

/** What lies where, and what is in the car by the plan that is fixed; null while none is. */
interface Stock extends CarStock {
  readonly loaded: readonly (StallGoods & { readonly bring: number })[] | null;
}

interface Pressed {
  readonly kind: 'stockMove';
  readonly body: StockMove;
}

/**
 * What is noted when a job was pressed for a stall day: its pieces come home and, where the plan is fixed, go on into
 * the car. It names the day, whose cost they are from then on as before, and is noted under the design that the day
 * names, also where another job pressed it, so that the plan finds it.
 *
 * @param press of one design
 */
export function pressedEntries(
  stallDayId: string,
  press: readonly ToPress[],
  { piles, moves, loaded }: Stock,
): readonly Pressed[] {
  const home = { place: { kind: 'home' }, grade: 'first' } as const;
  const pressed = press.filter((one) => one.press > 0);
  const made = pressed.map(
    (one): StockMove => ({
      ...{ item: itemOf(one), ...home, quantity: one.press, cause: 'made', unitCost: null },
      reference: { kind: 'stallDay', id: stallDayId },
    }),
  );
  const keys = new Set(pressed.map(goodsKey));
  const now = [
    ...piles,
    ...made.map(({ item, quantity }): Pile => ({ item, ...home, quantity, lots: [], counted: null })),
  ];
  const loads = carMoves(
    stallDayId,
    (loaded ?? []).filter((one) => keys.has(goodsKey(one))),
    { piles: now, moves },
  );
  return [...made, ...loads].map((body) => ({ kind: 'stockMove', body }));
}

// Helpers

const itemOf = ({ jobId, lineId, size }: StallGoods) => ({ kind: 'finished', jobId, lineId, size }) as const;
