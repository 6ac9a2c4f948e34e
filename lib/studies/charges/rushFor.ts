import type { Planned } from '@/lib/calendar/planWork';
import { daysBetween, workingDaysBetween } from '@/shared/days';
import type { Workshop } from '@/shared/schemas/workshop';
import { type Rush, rushShare } from './rushShare';

export interface RushOfDay {
  readonly outcome: Rush;
  readonly wantedDays: number;
  readonly normalDays: number;
}

/**
 * What an order wanted by a day is charged for the rush.
 *
 * @param planned when its work can be done, alone or behind others; null where nobody has said when the bench is free
 */
export function rushFor(
  asOf: string,
  wantedOn: string,
  planned: Planned | null,
  { normalWorkingDays, rushShares }: Workshop['policy']['charges'],
): RushOfDay {
  const wantedDays = Math.max(0, workingDaysBetween(asOf, wantedOn));
  const hasCapacity =
    planned === null || (planned.kind === 'planned' && daysBetween(planned.plan.lastDay, wantedOn) >= 0);
  return {
    outcome: rushShare(wantedDays, normalWorkingDays, hasCapacity, rushShares),
    wantedDays,
    normalDays: normalWorkingDays,
  };
}
