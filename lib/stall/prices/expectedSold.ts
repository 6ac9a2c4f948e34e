import { demandOf } from '@/lib/stall/plan/demand/demand';
import { scenariosOf } from '@/lib/stall/plan/demand/scenarios';
import type { GoodsPlanned } from '@/lib/stall/plan/stallPlanned';
import type { StallDay } from '@/shared/schemas/stallDay';

/** @returns pieces that are sold of what is brought, over the weathers, in the order of the goods. */
export function expectedSold(
  goods: readonly Pick<GoodsPlanned, 'expected' | 'mine'>[],
  day: Pick<StallDay, 'weathers' | 'days'>,
): readonly number[] {
  const scenarios = scenariosOf(day);
  return goods.map(({ expected, mine }) =>
    demandOf(scenarios.map(({ chance, factor }) => ({ chance, mean: expected * factor }))).sold(mine),
  );
}
