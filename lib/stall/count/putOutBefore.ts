import { goodsKey } from '@/lib/stall/goodsKey';
import type { StallGoods } from '@/shared/schemas/stallDay';
import type { StallPlan } from '@/shared/schemas/stallPapers';
import type { TappedEntry } from './tappedEntry';

/** A plan by which may have been counted before. */
export interface EarlierPlan {
  readonly id: string;
  readonly body: Pick<StallPlan, 'goods'>;
}

/**
 * Pieces put out by earlier plans that the plan of now does not bring: whoever fixes it anew with the larger number has
 * them in it already, and who fixes it for another price has not.
 *
 * @param earlier the newest first
 */
export function putOutBefore(
  plan: Pick<StallPlan, 'goods'>,
  taps: readonly TappedEntry[],
  earlier: readonly EarlierPlan[],
): readonly { readonly goods: StallGoods; readonly pieces: number }[] {
  const plans = earlier.toReversed();
  const refills = taps.flatMap(({ body: { planId, tap } }) =>
    tap.what === 'refill' && plans.some(({ id }) => id === planId) ? [{ ...tap, planId }] : [],
  );
  const goods = new Map(refills.map((refill) => [goodsKey(refill.goods), refill.goods]));
  return [...goods].map(([key, one]) => {
    const pieces = plans.reduce((carried, { id, body }, at) => {
      const own = refills.filter((refill) => refill.planId === id && goodsKey(refill.goods) === key);
      const out = own.reduce((sum, refill) => sum + refill.pieces, carried);
      const more = bringOf(plans[at + 1]?.body ?? plan, key) - bringOf(body, key);
      return Math.min(out, Math.max(0, out - more));
    }, 0);
    return { goods: one, pieces };
  });
}

// Helpers

const bringOf = ({ goods }: Pick<StallPlan, 'goods'>, key: string): number =>
  goods.find((one) => goodsKey(one) === key)?.bring ?? 0;
