import { closeInForce, type DayPaper } from '@/lib/stall/closeInForce';
import type { TappedEntry } from '@/lib/stall/count/tappedEntry';
import { tapsOfDay } from '@/lib/stall/count/tappedEntry';
import { tapsSince } from '@/lib/stall/count/tapsSince';
import { goodsKey } from '@/lib/stall/goodsKey';
import type { StallGoods } from '@/shared/schemas/stallDay';
import type { DayClose } from '@/shared/schemas/stallPapers';
import type { StockMove } from '@/shared/schemas/stock';
import { type CarStock, carMoves } from './carMoves';
import { carNet, loadsOf } from './dayMoves';

export type DayRemoval =
  /** What was counted is in no close: without its day it would stay out of stock and money for ever. */
  | { readonly kind: 'refused'; readonly why: 'notClosed' | 'tapsSince' }
  | {
      readonly kind: 'ready';
      /** They lay home what lies in the car for the day. */
      readonly moves: readonly StockMove[];
      readonly pieces: number;
      readonly isClosed: boolean;
    };

/** @returns what goes with a stall day that is removed, or why it cannot be. */
export function dayRemoval(
  stallDayId: string,
  stock: CarStock,
  taps: readonly TappedEntry[],
  closes: readonly DayPaper<'dayClose', DayClose>[],
): DayRemoval {
  const close = closeInForce(closes, stallDayId);
  if (close !== null) {
    return tapsSince(close.body, taps) === 0
      ? // Its close emptied the car.
        { kind: 'ready', moves: [], pieces: 0, isClosed: true }
      : { kind: 'refused', why: 'tapsSince' };
  }
  if (tapsOfDay(taps, stallDayId).length > 0) return { kind: 'refused', why: 'notClosed' };
  const loads = loadsOf(stock.moves, stallDayId);
  const loaded = new Map<string, StallGoods>();
  for (const { body } of loads) if (body.item.kind === 'finished') loaded.set(goodsKey(body.item), body.item);
  const home = [...loaded.values()].map(({ jobId, lineId, size }) => ({ jobId, lineId, size, bring: 0 }));
  return {
    kind: 'ready',
    moves: carMoves(stallDayId, home, stock),
    pieces: home.reduce((sum, goods) => sum + Math.max(0, carNet(loads, goods) ?? 0), 0),
    isClosed: false,
  };
}
