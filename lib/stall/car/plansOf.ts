import type { Paper } from '@/shared/schemas/happened';
import type { StallPlan } from '@/shared/schemas/stallPapers';

/** A plan that was fixed, and whether it was taken back. */
export type FixedPlan = Pick<Paper<'stallPlan', StallPlan>, 'id' | 'at' | 'device' | 'number' | 'body'> & {
  readonly withdrawn: boolean;
};

export interface PlansOfDay<Plan extends FixedPlan = FixedPlan> {
  /** The newest that was not taken back: it is counted by. */
  readonly counts: Plan | null;
  /** Older ones that were not taken back either, the newest first. */
  readonly earlier: readonly Plan[];
  readonly withdrawn: readonly Plan[];
  /** Whether plans of several devices are in force, so that two phones may count by different ones. */
  readonly isOfSeveral: boolean;
}

/** What the plans of a stall day are numbered in. */
export const planSeries = (stallDayId: string): string => `stallPlan ${stallDayId}`;

/** @returns the plans of one stall day, by which of them it is counted; the same on every device that has them. */
export function plansOf<Plan extends FixedPlan>(
  papers: readonly Plan[],
  stallDayId: string,
): PlansOfDay<Plan> {
  const own = papers.filter(({ body }) => body.stallDayId === stallDayId).sort(newestFirst);
  const standing = own.filter(({ withdrawn }) => !withdrawn);
  const [counts = null, ...earlier] = standing;
  return {
    counts,
    earlier,
    withdrawn: own.filter(({ withdrawn }) => withdrawn),
    isOfSeveral: new Set(standing.map(({ device }) => device)).size > 1,
  };
}

// Helpers

/** Two of one moment are told apart by their ids, which are the same everywhere. */
const newestFirst = (one: FixedPlan, other: FixedPlan): number =>
  other.at - one.at || (other.id < one.id ? -1 : other.id > one.id ? 1 : 0);
