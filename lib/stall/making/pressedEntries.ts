import { carTransfers } from '@/lib/stall/car/carTransfers';
import type { Pile } from '@/lib/stock/foldStock';
import type { StallGoods } from '@/shared/schemas/stallDay';
import type { StockMove, StockTransfer } from '@/shared/schemas/stock';
import type { ToPress } from './toPress';

/** What lies where, and what is in the car by the plan that is fixed; null while none is. */
interface Stock {
  readonly piles: readonly Pile[];
  readonly loaded: readonly (StallGoods & { readonly bring: number })[] | null;
}

type Pressed =
  | { readonly kind: 'stockMove'; readonly body: StockMove }
  | { readonly kind: 'stockTransfer'; readonly body: StockTransfer };

/**
 * What is noted when a job was pressed for a stall day: its pieces come home and, where the plan is fixed, go on into
 * the car, since the close of the day looks for them there. It is noted under the design that the day names, also where
 * another job pressed it, so that the plan finds it.
 *
 * @param jobId the job that pressed it
 * @param press of one design
 */
export function pressedEntries(
  jobId: string,
  press: readonly ToPress[],
  { piles, loaded }: Stock,
): readonly Pressed[] {
  const home = { place: { kind: 'home' }, grade: 'first' } as const;
  const pressed = press.filter((one) => one.press > 0);
  const moves = pressed.map(
    (one): StockMove => ({
      ...{ item: itemOf(one), ...home, quantity: one.press, cause: 'made', unitCost: null },
      reference: { kind: 'job', id: jobId },
    }),
  );
  const isPressed = (goods: StallGoods) =>
    pressed.some(
      (one) => one.jobId === goods.jobId && one.lineId === goods.lineId && one.size === goods.size,
    );
  const now = [
    ...piles,
    ...moves.map(({ item, quantity }): Pile => ({ item, ...home, quantity, lots: [], counted: null })),
  ];
  const transfers = carTransfers((loaded ?? []).filter(isPressed), now).filter(
    ({ to }) => to.place.kind === 'van',
  );
  return [
    ...moves.map((body) => ({ kind: 'stockMove', body }) as const),
    ...transfers.map((body) => ({ kind: 'stockTransfer', body }) as const),
  ];
}

// Helpers

const itemOf = ({ jobId, lineId, size }: StallGoods) => ({ kind: 'finished', jobId, lineId, size }) as const;
