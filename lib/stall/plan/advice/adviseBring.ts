import type { GoodsPlanned } from '@/lib/stall/plan/stallPlanned';
import type { GoodsReckoned } from './goodsReckoned';
import { ruleBring } from './ruleBring';
import { type BringLimits, type Limited, withinLimits } from './withinLimits';

type Advice = Limited & { readonly why: readonly GoodsPlanned['advisedBy'][] };

/**
 * How many to bring of each goods: the rule, never fewer than lie finished at home, one at least of the middle sizes of
 * a design that comes along, and within the limits.
 */
export function adviseBring(goods: readonly GoodsReckoned[], limits: BringLimits): Advice {
  const rule = goods.map(ruleBring);
  const wanted = goods.map(({ atHome }, at) => Math.max(atHome, rule[at] ?? 0));
  const limited = withinLimits(goods, wanted, limits);
  const why = goods.map(({ atHome }, at): GoodsPlanned['advisedBy'] => {
    const [bring, first] = [limited.bring[at] ?? 0, rule[at] ?? 0];
    if (bring < Math.max(first, atHome)) return limited.trimmedFor ?? 'leastSizes';
    if (bring === first) return 'rule';
    return bring === atHome ? 'atHome' : 'leastSizes';
  });
  return { ...limited, why };
}
