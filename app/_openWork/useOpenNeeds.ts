'use client';

import { useMemo } from 'react';
import { namedInput } from '@/app/_documents/namedInput';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { Bench } from '@/app/_orderBook/useBench';
import type { OrderBook } from '@/app/_orderBook/useOrderBook';
import { useRunBook } from '@/app/_runBook/useRunBook';
import { useOpenStudy } from '@/app/_studies/useOpenStudy';
import { openWork } from '@/lib/openWork/openWork';

type OpenFrom = Pick<OrderBook, 'board' | 'today'> & {
  /** Left out where no day is asked for. */
  readonly latestOf?: Bench['latestOf'];
};

/** What all work that is going to be done will use. */
export function useOpenNeeds(workspace: ReadyWorkspace, { board, today, latestOf }: OpenFrom) {
  const { runs } = useRunBook(workspace);
  const { workshop, blanks, artworks, jobs, onHand, approvedVersions, consumables } = workspace;
  const { buyingLists, papers } = workspace;
  const open = useMemo(() => {
    const lists = Object.entries(buyingLists).map(([id, list]) => ({ id, list }));
    const orderedLists = new Set(
      papers.supplyOrder.flatMap(({ withdrawn, body }) => (withdrawn ? [] : (body.buyingListId ?? []))),
    );
    const dayOf = (orderId: string) => {
      const latest = latestOf?.(orderId);
      return latest?.kind === 'latest' ? latest.dates.pressOn : null;
    };
    return openWork({ board, runs, lists, orderedLists, latestOf: dayOf });
  }, [board, runs, buyingLists, papers.supplyOrder, latestOf]);
  const asked = useMemo(() => {
    const byId = new Map(jobs.map(({ id, job }) => [id, job]));
    const documents = { asOf: today, workshop, blanks, artworks, onHand, approvedVersions };
    const inputOf = (jobId: string) => {
      const job = byId.get(jobId);
      return job === undefined ? null : namedInput({ ...documents, job });
    };
    return {
      today,
      bench: { blocks: workshop.blocks, daysOff: workshop.daysOff },
      consumables: Object.entries(consumables).map(([id, consumable]) => ({ id, consumable })),
      open: open.map((one) => ({ ...one, inputs: one.works.map(({ jobId }) => inputOf(jobId)) })),
    };
  }, [open, today, workshop, blanks, artworks, jobs, onHand, approvedVersions, consumables]);
  return useOpenStudy(asked);
}
