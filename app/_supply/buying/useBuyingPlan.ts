'use client';

import { useMemo } from 'react';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { useOpenNeeds } from '@/app/_openWork/useOpenNeeds';
import { useBench } from '@/app/_orderBook/useBench';
import { useOrderBook } from '@/app/_orderBook/useOrderBook';
import { useRunBook } from '@/app/_runBook/useRunBook';
import { useBuyingStudy } from '@/app/_studies/useBuyingStudy';
import { runsToLearnFrom } from '@/lib/learning/runsToLearnFrom';
import { upperScrap } from '@/lib/learning/upperScrap';
import { laidOut } from '@/lib/openWork/laidOut';
import type { OpenNeeds } from '@/lib/openWork/openNeeds';
import type { BuyingList } from '@/shared/schemas/making/supply';
import { buyingAsk } from './buyingAsk';

/** What is to be bought, as far as it is worked out. */
export type PlanOfList = ReturnType<typeof useBuyingStudy>;

const NO_NEEDS: OpenNeeds = { needs: [], pressOn: [] };

/** What is to be bought for a list, beside what all other work keeps of the stock. */
export function useBuyingPlan(workspace: ReadyWorkspace, list: BuyingList): PlanOfList {
  const book = useOrderBook(workspace);
  const { latestOf } = useBench(workspace, book);
  const { runs } = useRunBook(workspace);
  const { today, board } = book;
  const made = useMemo(() => laidOut(runs, board), [runs, board]);
  const open = useOpenNeeds(workspace, { ...book, latestOf });
  const upperScrapOf = useMemo(() => upperScrap(runsToLearnFrom(runs), today), [runs, today]);
  const known = open.answer ?? (open.failure === null ? null : NO_NEEDS);
  const { plan, isWaiting, failure } = useBuyingStudy(
    known === null
      ? null
      : buyingAsk(workspace, list, { today, latestOf, open: known, laidOut: made, upperScrapOf }),
  );
  return { plan, isWaiting, failure: failure ?? open.failure };
}
