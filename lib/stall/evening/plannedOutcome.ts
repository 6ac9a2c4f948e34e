import { weathersKey } from '@/lib/stall/plan/demand/scenarios';
import { daysInOrder } from '@/lib/stall/sellingDays';
import type { StallPlan } from '@/shared/schemas/stallPapers';

/**
 * @param weatherIds the weather of each day; null where nobody said
 * @returns the outcome of a plan in these weathers, in whichever order where days weigh the same; null where it has none
 */
export function plannedOutcome(
  plan: StallPlan,
  weatherIds: readonly string[] | null,
): StallPlan['outcomes'][number] | null {
  if (weatherIds === null) return plan.outcomes.length === 1 ? (plan.outcomes[0] ?? null) : null;
  const days = daysInOrder(plan);
  const key = weathersKey(weatherIds, days);
  return plan.outcomes.find((one) => weathersKey(one.weatherIds, days) === key) ?? null;
}
