import type { Pile } from '@/lib/stock/foldStock';
import { isReady } from '@/lib/stock/isReady';
import type { StallGoods } from '@/shared/schemas/stallDay';
import type { StockTransfer } from '@/shared/schemas/stock';

/** Pieces that are to lie in the car. */
type Loaded = StallGoods & { readonly bring: number };

/**
 * What moves between home and car so that the car holds what is brought. It is reckoned from what lies in the car, so
 * that a second plan moves what differs from the first alone, and taking one back moves the same again.
 *
 * Goods nobody ever counted or made note of are left out: nothing is invented. Of those that are known all that is
 * brought moves, also where fewer lie at home: pieces pressed later come home by their own entry, and until then the
 * stock tells that more went out than was in.
 *
 * @param goods each goods once
 */
export function carTransfers(goods: readonly Loaded[], piles: readonly Pile[]): readonly StockTransfer[] {
  return goods.flatMap(({ bring, jobId, lineId, size }): readonly StockTransfer[] => {
    const item = { kind: 'finished', jobId, lineId, size } as const;
    const own = piles.filter(
      (pile) =>
        pile.item.kind === 'finished' &&
        pile.item.jobId === jobId &&
        pile.item.lineId === lineId &&
        pile.item.size === size &&
        pile.grade === 'first',
    );
    const inCar = own.filter(({ place }) => place.kind === 'van');
    if (inCar.length === 0 && !own.some(isReady)) return [];
    const more = bring - inCar.reduce((sum, { quantity }) => sum + quantity, 0);
    if (more === 0) return [];
    const home = { item, place: { kind: 'home' }, grade: 'first' } as const;
    const car = { item, place: { kind: 'van' }, grade: 'first' } as const;
    return [more > 0 ? { from: home, to: car, quantity: more } : { from: car, to: home, quantity: -more }];
  });
}
