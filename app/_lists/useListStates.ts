'use client';

import { useMemo } from 'react';
import type { ItemState } from '@/lib/price/listDocument/compareItem';
import type { ListVersion } from '@/shared/schemas/priceList';
import { useToday } from '../_documents/useToday';
import type { ReadyMaker } from '../_documents/WithWorkshop';
import { useSteadyAsks } from '../_studies/useSteadyAsks';
import { type StudyAsk, useStudies } from '../_studies/useStudies';

/** How an issued item stands today; `asked` until the sums are made. */
export type ItemStanding = ItemState | { readonly kind: 'gone' | 'asked' } | FailedItem;

interface FailedItem {
  readonly kind: 'failed';
  readonly why: string;
}

/** Holds the items of a version against today's rates, in the study worker; in the order of the version. */
export function useListStates(
  { workshop, blanks, artworks, jobs }: ReadyMaker,
  version: ListVersion | undefined,
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
            input: { asOf, workshop, blanks, artworks, job },
            question: { item, currency, taxMode },
          },
        ];
      }),
    [asOf, workshop, blanks, artworks, jobs, version],
  );
  const asks = useSteadyAsks(wanted);
  const told = useStudies('compareItem', asks);
  return (version?.items ?? []).map(({ id, jobId }): ItemStanding => {
    if (!jobs.some((kept) => kept.id === jobId)) return { kind: 'gone' };
    const found = told.get(id);
    if (found === undefined || !asks.includes(found.ask)) return { kind: 'asked' };
    return found.answer ?? { kind: 'failed', why: found.failure ?? 'it gave no answer' };
  });
}
