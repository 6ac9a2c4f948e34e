'use client';

import { useMemo } from 'react';
import { useToday } from '@/app/_clock/useToday';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { useSteadyAsks } from '@/app/_studies/useSteadyAsks';
import { type StudyAsk, useStudies } from '@/app/_studies/useStudies';
import type { ItemStanding } from '@/app/_words/priceLists/standingWords';
import { NO_ANSWER } from '@/app/_workers/askWorker';
import type { PriceListVersion } from '@/shared/schemas/priceList';

/** Holds the items of a version against today's rates, in the study worker; in the order of the version. */
export function useListStates(
  { workshop, blanks, artworks, jobs, onHand, approvedVersions }: ReadyWorkspace,
  version: PriceListVersion | undefined,
): readonly ItemStanding[] {
  const asOf = useToday();
  const wanted = useMemo(
    () =>
      (version?.items ?? []).flatMap((item): readonly StudyAsk<'compareItem'>[] => {
        const job = jobs.find(({ id }) => id === item.jobId)?.job;
        if (job === undefined || version === undefined) return [];
        const { currency, taxMode } = version;
        return [
          {
            key: item.id,
            input: { asOf, workshop, blanks, artworks, job, onHand, approvedVersions },
            question: { item, currency, taxMode },
          },
        ];
      }),
    [asOf, workshop, blanks, artworks, jobs, onHand, approvedVersions, version],
  );
  const asks = useSteadyAsks(wanted);
  const results = useStudies('compareItem', asks);
  return (version?.items ?? []).map(({ id, jobId }): ItemStanding => {
    if (!jobs.some((kept) => kept.id === jobId)) return { kind: 'gone' };
    const found = results.get(id);
    if (found === undefined || !asks.includes(found.ask)) return { kind: 'asked' };
    return found.answer ?? { kind: 'failed', failure: found.failure ?? NO_ANSWER };
  });
}
