import { designKey } from '@/lib/stall/designKey';
import type { GoodsReckoned } from '@/lib/stall/plan/goodsReckoned';
import type { GoodsPlanned } from '@/lib/stall/plan/stallPlanned';
import { ruleBring } from './ruleBring';
import { type BringLimits, type Limited, withinLimits } from './withinLimits';

export type Advice = Limited & { readonly why: readonly GoodsPlanned['advisedBy'][] };

/**
 * How many to bring of each goods: the rule, never fewer than lie finished at home, one at least of the middle sizes of
 * a design that comes along, and within the limits.
 *
 * @param leftOut designs, by `designKey`, of which only what lies finished comes along
 */
export function adviseBring(
  goods: readonly GoodsReckoned[],
  limits: BringLimits,
  leftOut: ReadonlySet<string> = new Set(),
): Advice {
  const rule = goods.map(ruleBring);
  const wanted = goods.map((each, at) =>
    leftOut.has(designKey(each)) ? each.atHome : Math.max(each.atHome, rule[at] ?? 0),
  );
  const limited = withinLimits(goods, wanted, limits, leftOut);
  const why = goods.map((each, at): GoodsPlanned['advisedBy'] => {
    const { atHome } = each;
    if (leftOut.has(designKey(each))) return 'onceCost';
    const [bring, first] = [limited.bring[at] ?? 0, rule[at] ?? 0];
    if (bring < Math.max(first, atHome)) return limited.trimmedFor ?? 'leastSizes';
    if (bring === first) return 'rule';
    return bring === atHome ? 'atHome' : 'leastSizes';
  });
  return { ...limited, why };
}
