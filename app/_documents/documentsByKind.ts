import type { DocumentsState } from '@/app/_store/documentsState';
import type { DocumentBodies } from '@/lib/kinds/kinds';
import type { Artwork } from '@/shared/schemas/artwork';
import type { Blank } from '@/shared/schemas/blank';
import type { Customer } from '@/shared/schemas/customer';
import type { Job } from '@/shared/schemas/job';
import type { Run } from '@/shared/schemas/making/run';
import type { BuyingList, Consumable, Supplier } from '@/shared/schemas/making/supply';
import type { Order } from '@/shared/schemas/order';
import type { PriceList } from '@/shared/schemas/priceList';
import type { Shop } from '@/shared/schemas/shop';
import type { StallDay } from '@/shared/schemas/stallDay';
import type { Stored } from '@/shared/schemas/stored';
import type { Workshop } from '@/shared/schemas/workshop';
import { type IssuedVersions, issuedByList, noneIssued, type VersionPaper } from './issuedVersions';

/** The one workshop of a device. */
export const WORKSHOP_ID = 'workshop';

export interface JobRecord {
  readonly id: string;
  readonly job: Job;
  /** When it was last changed, ms since 1970. */
  readonly updatedAt: number;
}

export interface PriceListRecord {
  readonly id: string;
  readonly list: PriceList;
  /** When it was last changed, ms since 1970. */
  readonly updatedAt: number;
  readonly issued: IssuedVersions;
}

interface OrderRecord {
  readonly id: string;
  readonly order: Order;
  /** When it was last changed, ms since 1970. */
  readonly updatedAt: number;
}

/** The maker's documents sorted by what they are; what did not change stays the same object. */
export interface DocumentsByKind {
  /** Null while the store is opening, and where the workshop's record cannot be read. */
  readonly workshop: Workshop | null;
  readonly blanks: Readonly<Record<string, Blank>>;
  readonly artworks: Readonly<Record<string, Artwork>>;
  /** Last changed first. */
  readonly jobs: readonly JobRecord[];
  readonly customers: Readonly<Record<string, Customer>>;
  /** Last changed first. */
  readonly orders: readonly OrderRecord[];
  /** Last changed first. */
  readonly lists: readonly PriceListRecord[];
  readonly stallDays: Readonly<Record<string, StallDay>>;
  readonly shops: Readonly<Record<string, Shop>>;
  readonly suppliers: Readonly<Record<string, Supplier>>;
  readonly consumables: Readonly<Record<string, Consumable>>;
  readonly buyingLists: Readonly<Record<string, BuyingList>>;
  readonly runs: Readonly<Record<string, Run>>;
  /** What went out of price lists, by the id of the list; removed ones among them. */
  readonly issued: ReadonlyMap<string, IssuedVersions>;
}

export function documentsByKind(
  {
    workshop,
    blank,
    artwork,
    job,
    priceList,
    customer,
    order,
    stallDay,
    shop,
    supplier,
    consumable,
    buyingList,
    run,
  }: DocumentsState<DocumentBodies>['kinds'],
  versions: readonly VersionPaper[],
): DocumentsByKind {
  const issued = issuedOf(versions);
  return {
    workshop: workshop.bodies[WORKSHOP_ID] ?? null,
    blanks: blank.bodies,
    artworks: artwork.bodies,
    jobs: keptJobs(job.documents),
    customers: customer.bodies,
    orders: keptOrders(order.documents),
    stallDays: stallDay.bodies,
    shops: shop.bodies,
    suppliers: supplier.bodies,
    consumables: consumable.bodies,
    buyingLists: buyingList.bodies,
    runs: run.bodies,
    lists: keptLists(priceList.documents)(issued),
    issued,
  };
}

// Helpers

/** Many parts of a screen ask for the same: each list and each entry is made once. */
function madeOnce<From extends object, To>(make: (from: From) => To): (from: From) => To {
  const made = new WeakMap<From, { readonly to: To }>();
  return (from) => {
    const known = made.get(from);
    if (known !== undefined) return known.to;
    const to = make(from);
    made.set(from, { to });
    return to;
  };
}

const newest = (a: { readonly updatedAt: number }, b: { readonly updatedAt: number }) =>
  b.updatedAt - a.updatedAt;

const keptJob = madeOnce(
  ({ id, body, updatedAt }: Stored<'job', Job>): JobRecord => ({ id, job: body, updatedAt }),
);
const keptJobs = madeOnce((documents: readonly Stored<'job', Job>[]) => documents.map(keptJob).sort(newest));

const keptOrder = madeOnce(
  ({ id, body, updatedAt }: Stored<'order', Order>): OrderRecord => ({ id, order: body, updatedAt }),
);
const keptOrders = madeOnce((documents: readonly Stored<'order', Order>[]) =>
  documents.map(keptOrder).sort(newest),
);

/** As they were sorted last: what went out of a list in which nothing changed stays the same object. */
let lastIssued: ReadonlyMap<string, IssuedVersions> = new Map();

const issuedOf = madeOnce((versions: readonly VersionPaper[]) => {
  lastIssued = issuedByList(versions, lastIssued);
  return lastIssued;
});

const keptList = madeOnce(({ id, body, updatedAt }: Stored<'priceList', PriceList>) =>
  madeOnce((issued: IssuedVersions): PriceListRecord => ({ id, list: body, updatedAt, issued })),
);
const keptLists = madeOnce((documents: readonly Stored<'priceList', PriceList>[]) =>
  madeOnce((issued: ReadonlyMap<string, IssuedVersions>) =>
    documents.map((document) => keptList(document)(issued.get(document.id) ?? noneIssued)).sort(newest),
  ),
);
