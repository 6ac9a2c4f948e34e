import { goodsKey } from '@/lib/stall/goodsKey';
import type { StallGoods } from '@/shared/schemas/stallDay';
import type { PlannedGoods, StallPlan } from '@/shared/schemas/stallPapers';

/**
 * What was tapped by a former plan and stands no longer in the one that is counted by.
 *
 * @param former plans of the same day, the newest first; one in another currency has no price that holds here
 * @param tapped goods of the count
 * @returns them as the newest former plan names them, in the order of the count; what no plan here names is left out
 */
export function besidePlan(
  plan: StallPlan,
  former: readonly { readonly body: StallPlan }[],
  tapped: readonly StallGoods[],
): readonly PlannedGoods[] {
  const own = new Set(plan.goods.map(goodsKey));
  const others = tapped.filter((goods) => !own.has(goodsKey(goods)));
  if (others.length === 0) return [];
  const known = new Map<string, PlannedGoods>();
  for (const { body } of former) {
    if (body.currency !== plan.currency) continue;
    for (const goods of body.goods) if (!known.has(goodsKey(goods))) known.set(goodsKey(goods), goods);
  }
  return others.flatMap((goods) => known.get(goodsKey(goods)) ?? []);
}
