import type { PlannedGoods, StallPlan } from '@/shared/schemas/stallPapers';

/** @returns “Fern M”, and of a range without sizes “Mugs, Fern”. */
export function goodsName(
  { ranges }: Pick<StallPlan, 'ranges'>,
  goods: Pick<PlannedGoods, 'rangeId' | 'design' | 'size'>,
): string {
  const range = ranges.find(({ id }) => id === goods.rangeId);
  if (range === undefined || range.hasSizes) return `${goods.design} ${goods.size}`;
  return `${range.name}, ${goods.design}`;
}
