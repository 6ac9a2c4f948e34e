import type { RulerMark } from '@/app/_ruler/rulerMark';
import { breakEvenNames } from '@/app/_words/stall/stallPlanWords';
import type { StallPlan } from '@/shared/schemas/stallPapers';

/** Nobody sells half a piece: from the next whole one on it is earned back. */
export const breakEvenMarks = (breakEven: StallPlan['breakEven']): readonly RulerMark[] =>
  (['cash', 'withPay', 'everything', 'withWriteDown'] as const).flatMap((id) => {
    const value = breakEven?.[id] ?? null;
    return value === null ? [] : [{ id, label: breakEvenNames[id], value: Math.ceil(value) }];
  });
