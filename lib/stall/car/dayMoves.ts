import { byGoods } from '@/lib/stall/byGoods';
import { goodsKey } from '@/lib/stall/goodsKey';
import type { Entry } from '@/shared/schemas/happened';
import type { StallGoods } from '@/shared/schemas/stallDay';
import type { StockGrade, StockMove } from '@/shared/schemas/stock';

/** A move of stock as it was noted. */
export type NotedMove = Pick<Entry<'stockMove', StockMove>, 'id' | 'at' | 'body'>;

/** @returns what was moved between home and the car for one stall day, among moves in force */
export const loadsOf = <Of extends NotedMove>(moves: readonly Of[], stallDayId: string): readonly Of[] =>
  moves.filter(({ body }) => loadedFor(body) === stallDayId);

/** @returns the stall day that a move loads or unloads the car for; null for all other moves */
export const loadedFor = ({ reference, cause }: StockMove): string | null =>
  reference?.kind === 'stallDay' && cause === 'returned' ? reference.id : null;

/** @returns the closed stall day that a move takes pieces from which it left in the car, for another day; null for all other moves */
export const takenFrom = ({ reference, cause }: StockMove): string | null =>
  reference?.kind === 'stallDay' && cause === 'used' ? reference.id : null;

/** @returns what was pressed for one stall day, pieces of first grade, wherever it lies now */
export function pressedFor(
  moves: readonly NotedMove[],
  stallDayId: string,
): readonly (StallGoods & { readonly pieces: number })[] {
  const pressed = new Map<string, StallGoods & { readonly pieces: number }>();
  for (const { body } of moves) {
    const { item, reference, cause, grade, quantity } = body;
    if (item.kind !== 'finished' || cause !== 'made' || grade !== 'first') continue;
    if (reference?.kind !== 'stallDay' || reference.id !== stallDayId) continue;
    const { jobId, lineId, size } = item;
    const key = goodsKey(item);
    pressed.set(key, { jobId, lineId, size, pieces: (pressed.get(key)?.pieces ?? 0) + quantity });
  }
  return [...pressed.values()];
}

/** @returns whether something in stock is of these goods */
export const isOf = (item: StockMove['item'], goods: StallGoods): boolean =>
  item.kind === 'finished' && goodsKey(item) === goodsKey(goods);

/** @returns reads the moves of some goods */
export const movesByGoods = (moves: readonly NotedMove[]): ((goods: StallGoods) => readonly NotedMove[]) =>
  byGoods(moves, ({ body }) => body.item);

/** @returns what moves of some goods put into the car, pieces of one grade; null where none touches it */
export function carNet(
  moves: readonly NotedMove[],
  goods: StallGoods,
  grade: StockGrade = 'first',
): number | null {
  const own = moves.filter(
    ({ body }) => isOf(body.item, goods) && body.place.kind === 'van' && body.grade === grade,
  );
  return own.length === 0 ? null : own.reduce((sum, { body }) => sum + body.quantity, 0);
}
