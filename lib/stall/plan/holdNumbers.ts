import { goodsKey } from '@/lib/stall/goodsKey';
import type { StallDay, StallGoods } from '@/shared/schemas/stallDay';

type Held = StallDay['held'];

/**
 * @param numbers what is brought of some goods; null lets them follow the advice
 * @returns the maker's numbers with these in place of what was held of the same goods
 */
export function holdNumbers(
  held: Held,
  numbers: readonly (StallGoods & { readonly bring: number | null })[],
): Held {
  const changed = new Map(numbers.map((one) => [goodsKey(one), one]));
  const kept = held.flatMap((one) => {
    const to = changed.get(goodsKey(one));
    if (to === undefined) return [one];
    changed.delete(goodsKey(one));
    return to.bring === null ? [] : [{ ...one, bring: to.bring }];
  });
  const added = [...changed.values()].flatMap(({ jobId, lineId, size, bring }) =>
    bring === null ? [] : [{ jobId, lineId, size, bring }],
  );
  return [...kept, ...added];
}
