import type { Artwork } from '@/shared/schemas/artwork';
import type { Blank } from '@/shared/schemas/blank';
import type { Customer } from '@/shared/schemas/customer';
import type { Job } from '@/shared/schemas/job';
import type { Run } from '@/shared/schemas/making/run';
import type { BuyingList, Consumable, Supplier } from '@/shared/schemas/making/supply';
import type { Order } from '@/shared/schemas/order';
import type { PriceList } from '@/shared/schemas/priceList';
import type { JobInput } from '@/shared/schemas/request';
import type { Shop } from '@/shared/schemas/shop';
import type { StallDay } from '@/shared/schemas/stallDay';
import type { Workshop } from '@/shared/schemas/workshop';
import { CLUB_CUSTOMER_ID, CLUB_ENQUIRY_ID, clubCustomer, clubEnquiry } from './clubEnquiry';
import { clubEventDay } from './clubEventDay';
import { clubOrder } from './clubOrder';
import { exampleAt } from './exampleAt';
import { examplePriceList } from './examplePriceList';
import { fairMugs, fairShirts } from './fairJobs';
import type { Region } from './regionOf';
import { moneySize } from './scaleMoney';
import { SPRING_FAIR_ID, springFair, springFairDay } from './springFair';

/** Id of the finished job that a first visit shows. */
export const FIRST_JOB_ID = 'club-order';

export type ExampleDocument =
  | { readonly kind: 'workshop'; readonly id: string; readonly body: Workshop }
  | { readonly kind: 'blank'; readonly id: string; readonly body: Blank }
  | { readonly kind: 'artwork'; readonly id: string; readonly body: Artwork }
  | { readonly kind: 'job'; readonly id: string; readonly body: Job }
  | { readonly kind: 'priceList'; readonly id: string; readonly body: PriceList }
  | { readonly kind: 'customer'; readonly id: string; readonly body: Customer }
  | { readonly kind: 'order'; readonly id: string; readonly body: Order }
  | { readonly kind: 'stallDay'; readonly id: string; readonly body: StallDay }
  | { readonly kind: 'shop'; readonly id: string; readonly body: Shop }
  | { readonly kind: 'supplier'; readonly id: string; readonly body: Supplier }
  | { readonly kind: 'consumable'; readonly id: string; readonly body: Consumable }
  | { readonly kind: 'buyingList'; readonly id: string; readonly body: BuyingList }
  | { readonly kind: 'run'; readonly id: string; readonly body: Run };

/**
 * Everything a first visit finds: the workshop, its blanks and artworks, three jobs, a price list, the order of one of
 * the jobs with its customer, and the fair that the two others are made for.
 *
 * @param day the day of the visit, YYYY-MM-DD: the rates of the example are of that day, so that it does not age
 * @param region whose money, paper and units it is in; dollars, letter and inches unless told
 */
export function exampleDocuments(day: string, region?: Region): readonly ExampleDocument[] {
  const here = (input: JobInput) => (region === undefined ? input : exampleAt(input, region));
  const wantedOn = clubEventDay(day);
  const club = here(clubOrder(day, wantedOn));
  const shirts = here(fairShirts(day));
  const mugs = here(fairMugs(day));
  const artworks = { ...shirts.artworks, ...mugs.artworks, ...club.artworks };
  return [
    { kind: 'workshop', id: 'workshop', body: club.workshop },
    ...Object.entries(club.blanks).map(([id, body]) => ({ kind: 'blank', id, body }) as const),
    ...Object.entries(artworks).map(([id, body]) => ({ kind: 'artwork', id, body }) as const),
    { kind: 'job', id: FIRST_JOB_ID, body: club.job },
    { kind: 'job', id: 'fair-shirts', body: shirts.job },
    { kind: 'job', id: 'fair-mugs', body: mugs.job },
    {
      kind: 'priceList',
      id: 'club-prices',
      body: region?.units.length === 'mm' ? { ...examplePriceList, paper: 'a4' } : examplePriceList,
    },
    { kind: 'customer', id: CLUB_CUSTOMER_ID, body: clubCustomer },
    { kind: 'order', id: CLUB_ENQUIRY_ID, body: clubEnquiry(FIRST_JOB_ID, wantedOn) },
    {
      kind: 'stallDay',
      id: SPRING_FAIR_ID,
      body: springFair({
        day,
        fairDay: springFairDay(day),
        jobs: { 'fair-shirts': shirts.job, 'fair-mugs': mugs.job },
        times: moneySize(region?.currency ?? 'USD') ?? 1,
        isMetric: region?.units.length === 'mm',
      }),
    },
  ];
}
