import { byGoods } from '@/lib/stall/byGoods';
import type { Pile } from '@/lib/stock/foldStock';
import type { StallGoods } from '@/shared/schemas/stallDay';
import type { StockGrade, StockMove } from '@/shared/schemas/stock';
import { carNet, loadsOf, movesByGoods, type NotedMove } from './dayMoves';

/** Pieces that are to lie in the car. */
type Loaded = StallGoods & {
  readonly bring: number;
  /** Kept from before; left out nothing of second grade moves. */
  readonly seconds?: number;
};

/** What lies where, and the moves in force that say so. */
export interface CarStock {
  readonly piles: readonly Pile[];
  readonly moves: readonly NotedMove[];
}

/**
 * What moves between home and car so that the car holds what is brought to one stall day. It is reckoned from what was
 * loaded for that day, so that a second plan moves what differs from the first alone, taking one back moves the same
 * again, and what another day has in the same car stays there.
 *
 * Goods nobody ever counted or made note of are left out: nothing is invented. Of those that are known all that is
 * brought moves, also where fewer lie at home: pieces pressed later come home by their own entry, and until then the
 * stock tells that more went out than was in.
 *
 * @param goods each goods once
 */
export function carMoves(
  stallDayId: string,
  goods: readonly Loaded[],
  { piles, moves }: CarStock,
): readonly StockMove[] {
  const loads = movesByGoods(loadsOf(moves, stallDayId));
  const lying = byGoods(piles, ({ item }) => item);
  const reference = { kind: 'stallDay', id: stallDayId };
  const movesOf = (one: StallGoods, grade: StockGrade, bring: number): readonly StockMove[] => {
    const inCar = carNet(loads(one), one, grade);
    const isKnown = (pile: Pile) => pile.place.kind === 'home' && pile.grade === grade;
    if (inCar === null && !lying(one).some(isKnown)) return [];
    const more = bring - (inCar ?? 0);
    if (more === 0) return [];
    const { jobId, lineId, size } = one;
    const item = { kind: 'finished', jobId, lineId, size } as const;
    const move = { item, grade, cause: 'returned', reference, unitCost: null } as const;
    return [
      { ...move, place: { kind: 'home' }, quantity: -more },
      { ...move, place: { kind: 'van' }, quantity: more },
    ];
  };
  return goods.flatMap((one) => [
    ...movesOf(one, 'first', one.bring),
    ...(one.seconds === undefined ? [] : movesOf(one, 'second', one.seconds)),
  ]);
}
