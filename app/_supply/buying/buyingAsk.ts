'use client';

import { namedInput } from '@/app/_documents/namedInput';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { Bench } from '@/app/_orderBook/useBench';
import type { BuyingAsked, BuyingWork } from '@/lib/buying/buyingAsked';
import type { BuyingList } from '@/shared/schemas/supply';

/** @returns everything a buying list is worked out from. */
export function buyingAsk(
  workspace: ReadyWorkspace,
  list: BuyingList,
  { today, latestOf }: { readonly today: string; readonly latestOf: Bench['latestOf'] },
): BuyingAsked {
  const { workshop, blanks, artworks, jobs, onHand, approvedVersions, piles } = workspace;
  const documents = { asOf: today, workshop, blanks, artworks, onHand, approvedVersions };
  return {
    asOf: today,
    currency: workshop.currency,
    list,
    works: list.works.flatMap(({ jobId, orderId }): readonly BuyingWork[] => {
      const job = jobs.find(({ id }) => id === jobId)?.job;
      if (job === undefined) return [];
      const latest = orderId === null ? null : latestOf(orderId);
      const input = namedInput({ ...documents, job });
      const pressOn = latest?.kind === 'latest' ? latest.dates.pressOn : null;
      return [{ jobId, orderId, name: job.name, input, pressOn }];
    }),
    consumables: Object.entries(workspace.consumables).map(([id, consumable]) => ({ id, consumable })),
    suppliers: Object.entries(workspace.suppliers).map(([id, supplier]) => ({ id, supplier })),
    piles,
    reserved: [],
  };
}
