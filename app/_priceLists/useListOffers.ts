'use client';

import { useMemo } from 'react';
import { useToday } from '@/app/_clock/useToday';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { useSteadyAsks } from '@/app/_studies/useSteadyAsks';
import { type StudyAsk, useStudies } from '@/app/_studies/useStudies';
import type { ItemOffer } from '@/app/_words/priceLists/offerWords';
import { NO_ANSWER } from '@/app/_workers/askWorker';
import type { PriceListItem } from '@/shared/schemas/priceList';

interface ListOffers {
  /** In the order of the items; the last answer stays until the next is made. */
  readonly offers: readonly ItemOffer[];
  /** True while some of them are being made anew. */
  readonly isBusy: boolean;
}

/** Prices every item of a list with today's rates, in the study worker. */
export function useListOffers(
  { workshop, blanks, artworks, jobs, onHand, approvedVersions }: ReadyWorkspace,
  items: readonly PriceListItem[],
): ListOffers {
  const asOf = useToday();
  const wanted = useMemo(
    () =>
      items.flatMap((item): readonly StudyAsk<'freezeItem'>[] => {
        const job = jobs.find(({ id }) => id === item.jobId)?.job;
        return job === undefined
          ? []
          : [
              {
                key: item.id,
                input: { asOf, workshop, blanks, artworks, job, onHand, approvedVersions },
                question: item,
              },
            ];
      }),
    [asOf, workshop, blanks, artworks, jobs, onHand, approvedVersions, items],
  );
  const asks = useSteadyAsks(wanted);
  const results = useStudies('freezeItem', asks);
  return {
    offers: items.map(({ id, jobId }): ItemOffer => {
      if (!jobs.some((kept) => kept.id === jobId)) return { kind: 'gone' };
      const found = results.get(id);
      if (found === undefined) return { kind: 'asked' };
      return found.answer ?? { kind: 'failed', failure: found.failure ?? NO_ANSWER };
    }),
    isBusy: asks.some((ask) => results.get(ask.key)?.ask !== ask),
  };
}
