import { closeInForce, type DayPaper } from '@/lib/stall/closeInForce';
import type { TappedEntry } from '@/lib/stall/count/tappedEntry';
import { tapsOfDay } from '@/lib/stall/count/tappedEntry';
import { tapsSince } from '@/lib/stall/count/tapsSince';
import type { DayClose } from '@/shared/schemas/stallPapers';
import type { StockMove } from '@/shared/schemas/stock';
import type { CarStock } from './carMoves';
import { planMoves } from './planMoves';

export type DayRemoval =
  /** What was counted is in no close: without its day it would stay out of stock and money for ever. */
  | { readonly kind: 'refused'; readonly why: 'notClosed' | 'tapsSince' }
  | {
      readonly kind: 'ready';
      /** They lay home what lies in the car for the day. */
      readonly moves: readonly StockMove[];
      /** Of first grade and of second. */
      readonly pieces: number;
      /** Those of second grade among them. */
      readonly seconds: number;
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
        { kind: 'ready', moves: [], pieces: 0, seconds: 0, isClosed: true }
      : { kind: 'refused', why: 'tapsSince' };
  }
  if (tapsOfDay(taps, stallDayId).length > 0) return { kind: 'refused', why: 'notClosed' };
  // As where no plan is left: whatever was loaded for it comes home, in its grade.
  const moves = planMoves(stallDayId, [], stock);
  const outOfCar = moves.filter(({ place, quantity }) => place.kind === 'van' && quantity < 0);
  const piecesOf = (those: readonly StockMove[]) => those.reduce((sum, { quantity }) => sum - quantity, 0);
  const seconds = piecesOf(outOfCar.filter(({ grade }) => grade === 'second'));
  return { kind: 'ready', moves, pieces: piecesOf(outOfCar), seconds, isClosed: false };
}
