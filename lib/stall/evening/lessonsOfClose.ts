import { goodsKey } from '@/lib/stall/goodsKey';
import type { DayClose, PlannedGoods, StallPlan } from '@/shared/schemas/stallPapers';
import { firstsSold } from './firstsSold';
import { LEAST_LOST, nextBring } from './nextBring';

/** Goods that were gone before the end of a closed day, or until more was put out, as its close has them. Pieces. */
export interface ClosedLesson {
  readonly goods: Pick<PlannedGoods, 'jobId' | 'lineId' | 'size' | 'design'> & {
    /** Null where the plan of that day is not here. */
    readonly rangeId: string | null;
  };
  readonly brought: number;
  /** So many next time. */
  readonly next: number;
}

/**
 * What a closed day says of the next one, the most missed first. What the maker left out in the evening is not said
 * again, but for what was asked for.
 *
 * @param plan it was counted by; null where it is not here, and nothing is known of what was expected
 */
export function lessonsOfClose(
  close: Pick<DayClose, 'goods'>,
  plan: Pick<StallPlan, 'goods'> | null,
): readonly ClosedLesson[] {
  const planned = new Map((plan?.goods ?? []).map((goods) => [goodsKey(goods), goods]));
  return close.goods
    .filter(({ lost, asked, ...one }) => (leftOf(one) <= 0 || lost > 0) && lost + asked >= LEAST_LOST)
    .toSorted((one, other) => other.lost + other.asked - one.lost - one.asked)
    .map(({ jobId, lineId, size, design, brought, lost, asked, ...one }) => {
      const known = planned.get(goodsKey({ jobId, lineId, size }));
      return {
        goods: { jobId, lineId, size, design, rangeId: known?.rangeId ?? null },
        brought,
        next: nextBring(firstsSold(one) + lost + asked, { brought, expected: known?.expected ?? null }),
      };
    });
}

// Helpers

type Closed = Pick<
  DayClose['goods'][number],
  'brought' | 'sold' | 'keptSold' | 'given' | 'damaged' | 'counted'
>;

const leftOf = ({ brought, given, damaged, counted, ...one }: Closed): number =>
  counted ?? brought - firstsSold(one) - given - damaged;
