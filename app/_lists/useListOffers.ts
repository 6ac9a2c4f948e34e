'use client';

import { useMemo } from 'react';
import type { FrozenOutcome } from '@/lib/price/listDocument/freezeItem';
import type { ListItem } from '@/shared/schemas/priceList';
import { useToday } from '../_documents/useToday';
import type { ReadyMaker } from '../_documents/WithWorkshop';
import { useSteadyAsks } from '../_studies/useSteadyAsks';
import { type StudyAsk, useStudies } from '../_studies/useStudies';

/** What an item would be issued as today; `asked` until the sums are made. */
export type ItemOffer =
  | FrozenOutcome
  | { readonly kind: 'gone' | 'asked' }
  | { readonly kind: 'failed'; readonly why: string };

export interface ListOffers {
  /** In the order of the items; the last answer stays until the next is made. */
  readonly offers: readonly ItemOffer[];
  /** True while some of them are being made anew. */
  readonly isBusy: boolean;
}

/** Prices every item of a list with today's rates, in the study worker. */
export function useListOffers(
  { workshop, blanks, artworks, jobs }: ReadyMaker,
  items: readonly ListItem[],
): ListOffers {
  const asOf = useToday();
  const wanted = useMemo(
    () =>
      items.flatMap((item): readonly StudyAsk<'freezeItem'>[] => {
        const job = jobs.find(({ id }) => id === item.jobId)?.job;
        return job === undefined
          ? []
          : [{ key: item.id, input: { asOf, workshop, blanks, artworks, job }, question: item }];
      }),
    [asOf, workshop, blanks, artworks, jobs, items],
  );
  const asks = useSteadyAsks(wanted);
  const told = useStudies('freezeItem', asks);
  return {
    offers: items.map(({ id, jobId }): ItemOffer => {
      if (!jobs.some((kept) => kept.id === jobId)) return { kind: 'gone' };
      const found = told.get(id);
      if (found === undefined) return { kind: 'asked' };
      return found.answer ?? { kind: 'failed', why: found.failure ?? 'it gave no answer' };
    }),
    isBusy: asks.some((ask) => told.get(ask.key)?.ask !== ask),
  };
}
