import { newestFirst } from '@/lib/stall/newestFirst';
import type { Paper } from '@/shared/schemas/happened';
import type { StallPlan } from '@/shared/schemas/stallPapers';

/** A plan that was fixed, and whether it was taken back. */
export type FixedPlan = Pick<Paper<'stallPlan', StallPlan>, 'id' | 'at' | 'device' | 'number' | 'body'> & {
  readonly withdrawn: boolean;
};

export interface PlansOfDay<Plan extends FixedPlan = FixedPlan> {
  /** The newest that was not taken back, or that somebody counted by: it is counted by. */
  readonly counts: Plan | null;
  /** Whether it was taken back all the same, such as where sales were tapped elsewhere meanwhile. */
  readonly isTakenBack: boolean;
  /** Older ones of which the same holds, the newest first. */
  readonly earlier: readonly Plan[];
  readonly withdrawn: readonly Plan[];
  /** Whether plans of several devices are in force, so that two phones may count by different ones. */
  readonly isOfSeveral: boolean;
}

/** What the plans of a stall day are numbered in. */
export const planSeries = (stallDayId: string): string => `stallPlan ${stallDayId}`;

/** @returns plans that a tap or a close names: they stay, for taking one back would hide what was counted by it */
export const plansCountedBy = (
  taps: readonly { readonly body: { readonly planId: string } }[],
  closes: readonly { readonly body: { readonly planId: string | null }; readonly withdrawn: boolean }[],
): ReadonlySet<string> =>
  new Set([
    ...taps.map(({ body }) => body.planId),
    ...closes.flatMap(({ body, withdrawn }) => (withdrawn || body.planId === null ? [] : [body.planId])),
  ]);

/**
 * @param countedBy of `plansCountedBy`
 * @returns the plans of one stall day, by which of them it is counted; the same on every device that has them
 */
export function plansOf<Plan extends FixedPlan>(
  papers: readonly Plan[],
  stallDayId: string,
  countedBy: ReadonlySet<string>,
): PlansOfDay<Plan> {
  const own = papers.filter(({ body }) => body.stallDayId === stallDayId).sort(newestFirst);
  const stands = ({ id, withdrawn }: Plan) => !withdrawn || countedBy.has(id);
  const standing = own.filter(stands);
  const [counts = null, ...earlier] = standing;
  return {
    counts,
    isTakenBack: counts?.withdrawn ?? false,
    earlier,
    withdrawn: own.filter((plan) => !stands(plan)),
    isOfSeveral: new Set(own.flatMap(({ device, withdrawn }) => (withdrawn ? [] : [device]))).size > 1,
  };
}
