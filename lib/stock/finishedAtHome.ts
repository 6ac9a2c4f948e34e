import type { StallGoods } from '@/shared/schemas/stallDay';
import type { Pile } from './foldStock';
import { isReady } from './isReady';

/** @returns finished pieces of first grade at home; goods of which nothing is known are left out, which is not 0 */
export const finishedAtHome = (
  piles: readonly Pile[],
): readonly (StallGoods & { readonly pieces: number })[] =>
  piles.flatMap((pile) => {
    const { item, quantity } = pile;
    if (item.kind !== 'finished' || !isReady(pile)) return [];
    return [{ jobId: item.jobId, lineId: item.lineId, size: item.size, pieces: quantity }];
  });
