import { goodsKey } from '@/lib/stall/goodsKey';
import type { StallGoods } from '@/shared/schemas/stallDay';
import type { StallPlan } from '@/shared/schemas/stallPapers';
import type { GoodsCount } from './dayCount';
import { priceNow } from './priceNow';
import { type EarlierPlan, putOutBefore } from './putOutBefore';
import { sellingStretches } from './sellingStretches';
import type { WallClock } from './sellingTime';
import type { TappedEntry } from './tappedEntry';

/**
 * What became of each of the goods.
 *
 * @param taps in order
 * @param earlier plans that this one took the place of, the newest first
 * @param wallAt reads the moment of a tap as the wall of the stall shows it
 * @returns the goods of the plan in its order, then what was tapped and is not in it
 */
export function goodsCounts(
  plan: StallPlan,
  taps: readonly TappedEntry[],
  earlier: readonly EarlierPlan[],
  wallAt: WallClock,
): readonly GoodsCount[] {
  const counts = new Map<string, Counting>();
  const of = (goods: StallGoods): Counting => {
    const key = goodsKey(goods);
    const count = counts.get(key) ?? begun(goods, 0, 0);
    counts.set(key, count);
    return count;
  };
  for (const goods of plan.goods) counts.set(goodsKey(goods), begun(goods, goods.bring, goods.seconds ?? 0));
  for (const { goods, pieces } of putOutBefore(plan, taps, earlier)) of(goods).brought += pieces;
  const before = new Set(earlier.map(({ id }) => id));
  const planned = new Map(plan.goods.map((goods) => [goodsKey(goods), goods]));
  for (const tapped of taps) {
    const isForeign = tapped.body.currency !== plan.currency;
    // Counted already, as far as the plan does not bring it.
    if (tapped.body.tap.what === 'refill' && before.has(tapped.body.planId)) continue;
    countTap(tapped, of, (goods, minor) => {
      if (!isForeign) of(goods).revenueMinor += minor;
    });
  }
  const stretches = sellingStretches(taps, counts);
  return [...counts].map(([key, one]) => {
    const goods = planned.get(key);
    const { lastSoldAt } = one;
    const lastPriceMinor =
      goods === undefined || lastSoldAt === null ? null : priceNow(plan, goods, wallAt(lastSoldAt));
    return { ...counted(one), lastPriceMinor, stretches: stretches.get(key) ?? [] };
  });

  /** @param earn adds to the revenue of some goods */
  function countTap(
    { at, body: { tap } }: TappedEntry,
    count: (goods: StallGoods) => Counting,
    earn: (goods: StallGoods, minor: number) => void,
  ): void {
    switch (tap.what) {
      case 'sale':
        sell(count(tap.goods), at);
        if (tap.isSecond === true) count(tap.goods).secondsSold += 1;
        earn(tap.goods, tap.minor);
        return;
      case 'refund':
        count(tap.goods).sold -= 1;
        earn(tap.goods, -tap.minor);
        return;
      case 'exchange': {
        // The price of what came back goes with the customer again, in the other piece.
        const moved = planned.get(goodsKey(tap.back))?.price ?? 0;
        count(tap.back).sold -= 1;
        earn(tap.back, -moved);
        sell(count(tap.out), at);
        earn(tap.out, moved + tap.minor);
        return;
      }
      case 'given':
        count(tap.goods).given += 1;
        return;
      case 'damaged':
        count(tap.goods).damaged += 1;
        if (tap.isSecond) count(tap.goods).seconds += 1;
        return;
      case 'refill':
        count(tap.goods).brought += tap.pieces;
        return;
      case 'asked':
        if (tap.goods !== null) count(tap.goods).asked += 1;
        return;
      case 'putBack':
        if (tap.goods !== null) count(tap.goods).putBack += 1;
        return;
      default:
        return;
    }
  }
}

// Helpers

/** Known once all is counted. */
type Reckoned = 'left' | 'lastPriceMinor' | 'stretches';

/** While it is being counted. */
type Counting = { -readonly [Key in keyof Omit<GoodsCount, Reckoned>]: GoodsCount[Key] };

const begun = ({ jobId, lineId, size }: StallGoods, brought: number, keptBrought: number): Counting => ({
  jobId,
  lineId,
  size,
  brought,
  sold: 0,
  given: 0,
  damaged: 0,
  seconds: 0,
  secondsSold: 0,
  keptBrought,
  keptSold: 0,
  asked: 0,
  putBack: 0,
  revenueMinor: 0,
  lastSoldAt: null,
});

/**
 * A second that is sold is one that was kept from before, else one that was spoiled on the day, else one of the others
 * that was spoiled just then. Whichever was tapped first, spoiled or sold: each piece is counted once.
 */
function counted(count: Counting): Counting & Pick<GoodsCount, 'left'> {
  const keptSold = Math.min(count.keptBrought, count.secondsSold);
  const ofDay = Math.min(count.seconds, count.secondsSold - keptSold);
  const [damaged, seconds] = [count.damaged - ofDay, count.seconds - ofDay];
  const left = count.brought - (count.sold - keptSold) - count.given - damaged;
  return { ...count, damaged, seconds, keptSold, left };
}

/** The latest by the clock, for two devices may come together in any order. */
function sell(count: Counting, at: number): void {
  count.sold += 1;
  count.lastSoldAt = Math.max(at, count.lastSoldAt ?? at);
}
