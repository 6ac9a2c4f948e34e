import type { Artwork } from '@/shared/schemas/artwork';
import type { Blank } from '@/shared/schemas/blank';
import type { Job } from '@/shared/schemas/job';
import type { PriceList } from '@/shared/schemas/priceList';
import type { Workshop } from '@/shared/schemas/workshop';
import { clubOrder } from './clubOrder';
import { examplePriceList } from './examplePriceList';
import { fairMugs, fairShirts } from './fairJobs';

/** Id of the finished job that a first visit shows. */
export const FIRST_JOB_ID = 'club-order';

export type ExampleDocument =
  | { readonly kind: 'workshop'; readonly id: string; readonly body: Workshop }
  | { readonly kind: 'blank'; readonly id: string; readonly body: Blank }
  | { readonly kind: 'artwork'; readonly id: string; readonly body: Artwork }
  | { readonly kind: 'job'; readonly id: string; readonly body: Job }
  | { readonly kind: 'priceList'; readonly id: string; readonly body: PriceList };

/**
 * Everything a first visit finds: the workshop, its blanks and artworks, and three jobs.
 *
 * @param day the day of the visit, YYYY-MM-DD: the rates of the example are of that day, so that it does not age
 * @param eventDay the day the club wants its shirts
 */
export function exampleDocuments(day: string, eventDay: string): readonly ExampleDocument[] {
  const club = clubOrder(day, eventDay);
  const shirts = fairShirts(day);
  const mugs = fairMugs(day);
  const artworks = { ...shirts.artworks, ...mugs.artworks, ...club.artworks };
  return [
    { kind: 'workshop', id: 'workshop', body: club.workshop },
    ...Object.entries(club.blanks).map(([id, body]) => ({ kind: 'blank', id, body }) as const),
    ...Object.entries(artworks).map(([id, body]) => ({ kind: 'artwork', id, body }) as const),
    { kind: 'job', id: FIRST_JOB_ID, body: club.job },
    { kind: 'job', id: 'fair-shirts', body: shirts.job },
    { kind: 'job', id: 'fair-mugs', body: mugs.job },
    { kind: 'priceList', id: 'club-prices', body: examplePriceList },
  ];
}
