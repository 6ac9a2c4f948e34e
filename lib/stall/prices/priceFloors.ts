import type { GoodsPlanned } from '@/lib/stall/plan/stallPlanned';
import type { PieceMoney } from './pieceMoney';

/** Written prices below which something is not paid any more; null where no price pays it. Currency units, unrounded. */
export interface PriceFloors {
  /** Below this a piece is worth more at home: its making is spent, so only what it will still fetch counts. */
  readonly takeHome: number | null;
  /** Pays what one more piece takes: material, minutes and wear. */
  readonly making: number | null;
  /** The overhead on its minutes as well. */
  readonly withOverhead: number | null;
}

type Costs = Pick<GoodsPlanned, 'cost' | 'costWithOverhead' | 'packaging' | 'leftoverShare'>;

/** @returns the floors of the price of a piece that was made for the day. */
export const priceFloors = (
  { cost, costWithOverhead, packaging, leftoverShare }: Costs,
  money: Pick<PieceMoney, 'priceFor'>,
): PriceFloors => ({
  takeHome: money.priceFor(leftoverShare * cost + packaging),
  making: money.priceFor(cost + packaging),
  withOverhead: money.priceFor(costWithOverhead + packaging),
});
