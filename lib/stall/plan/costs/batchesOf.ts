import { goodsKey } from '@/lib/stall/goodsKey';
import type { StallGoods } from '@/shared/schemas/stallDay';
import type { BatchCosts, JobBatch, MakingCosts } from './makingCosts';

/** What making a plan costs once; `bring` by the order of the goods. What was finished before is not pressed. */
export interface Batches {
  readonly all: (bring: readonly number[]) => BatchCosts;
  readonly ofJob: (jobId: string, bring: readonly number[]) => JobBatch;
}

/** @param jobs by their id; goods of none cost nothing once */
export function batchesOf(
  goods: readonly (StallGoods & { readonly finishedBefore: number })[],
  jobs: ReadonlyMap<string, Pick<MakingCosts, 'batch'>>,
): Batches {
  const placesOf = new Map<string, (readonly [string, number])[]>();
  for (const [at, one] of goods.entries()) {
    const place = [goodsKey(one), at] as const;
    const places = placesOf.get(one.jobId);
    if (places === undefined) placesOf.set(one.jobId, [place]);
    else places.push(place);
  }
  const ofJob = (jobId: string, bring: readonly number[]): JobBatch => {
    const pressed = new Map(
      (placesOf.get(jobId) ?? []).map(([key, at]) => [
        key,
        Math.max(0, (bring[at] ?? 0) - (goods[at]?.finishedBefore ?? 0)),
      ]),
    );
    return jobs.get(jobId)?.batch((one) => pressed.get(goodsKey(one)) ?? 0) ?? noneOfJob;
  };
  return { ofJob, all: (bring) => [...jobs.keys()].map((jobId) => ofJob(jobId, bring)).reduce(added, none) };
}

// Helpers

const none: BatchCosts = { once: 0, benchHours: 0, benchPay: 0, cash: 0 };
const noneOfJob: JobBatch = { ...none, onceOfLines: new Map() };

const added = (sum: BatchCosts, next: BatchCosts): BatchCosts => ({
  once: sum.once + next.once,
  benchHours: sum.benchHours + next.benchHours,
  benchPay: sum.benchPay + next.benchPay,
  cash: sum.cash + next.cash,
});
