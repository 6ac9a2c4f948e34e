'use client';

import { namedInput } from '@/app/_documents/namedInput';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { Bench } from '@/app/_orderBook/useBench';
import type { BuyingAsked, BuyingWork } from '@/lib/buying/buyingAsked';
import type { LaidOut } from '@/lib/openWork/laidOut';
import { neededBefore } from '@/lib/openWork/neededBefore';
import type { OpenNeeds } from '@/lib/openWork/openNeeds';
import { workKey } from '@/lib/openWork/openWork';
import type { Job } from '@/shared/schemas/job';
import type { BuyingList } from '@/shared/schemas/making/supply';

interface BuyingFrom {
  readonly today: string;
  readonly latestOf: Bench['latestOf'];
  /** Of all work that is going to be done. */
  readonly open: OpenNeeds;
  readonly laidOut: LaidOut;
  readonly upperScrapOf: (job: Job) => BuyingWork['upperScrap'] & object;
}

/** @returns everything a buying list is worked out from. */
export function buyingAsk(
  workspace: ReadyWorkspace,
  list: BuyingList,
  { today, latestOf, open, laidOut, upperScrapOf }: BuyingFrom,
): BuyingAsked {
  const { workshop, blanks, artworks, jobs, onHand, approvedVersions, piles } = workspace;
  const documents = { asOf: today, workshop, blanks, artworks, onHand, approvedVersions };
  const inRuns = new Map(open.pressOn.map((work) => [workKey(work), work.day]));
  const isMade = (work: BuyingList['works'][number]) => laidOut.sure.has(workKey(work));
  const works = list.works.filter((work) => !isMade(work));
  const named = (jobId: string) => ({
    jobId,
    name: jobs.find(({ id }) => id === jobId)?.job.name ?? null,
  });
  return {
    asOf: today,
    currency: workshop.currency,
    list: { ...list, works },
    made: list.works.filter(isMade).map(({ jobId }) => named(jobId)),
    madeBefore: works.filter((work) => laidOut.before.has(workKey(work))).map(({ jobId }) => named(jobId)),
    works: works.flatMap((work): readonly BuyingWork[] => {
      const { jobId, orderId } = work;
      const job = jobs.find(({ id }) => id === jobId)?.job;
      if (job === undefined) return [];
      const latest = orderId === null ? null : latestOf(orderId);
      const input = namedInput({ ...documents, job });
      // A run says when it presses; an order only by when at the latest.
      const pressOn = inRuns.get(workKey(work)) ?? (latest?.kind === 'latest' ? latest.dates.pressOn : null);
      return [{ jobId, orderId, name: job.name, input, pressOn, upperScrap: upperScrapOf(job) }];
    }),
    consumables: Object.entries(workspace.consumables).map(([id, consumable]) => ({ id, consumable })),
    suppliers: Object.entries(workspace.suppliers).map(([id, supplier]) => ({ id, supplier })),
    piles,
    reserved: neededBefore(open.needs, works),
  };
}
