import type { DocumentsState } from '@/app/_store/documentsState';
import type { DocumentBodies } from '@/lib/kinds/kinds';
import type { Artwork } from '@/shared/schemas/artwork';
import type { Blank } from '@/shared/schemas/blank';
import type { Job } from '@/shared/schemas/job';
import type { PriceList } from '@/shared/schemas/priceList';
import type { Stored } from '@/shared/schemas/stored';
import type { Workshop } from '@/shared/schemas/workshop';

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
}

/** The maker's documents sorted by what they are; what did not change stays the same object. */
export interface DocumentsByKind {
  /** Null while the store is opening, and where the workshop's record cannot be read. */
  readonly workshop: Workshop | null;
  readonly blanks: Readonly<Record<string, Blank>>;
  readonly artworks: Readonly<Record<string, Artwork>>;
  /** Last changed first. */
  readonly jobs: readonly JobRecord[];
  /** Last changed first. */
  readonly lists: readonly PriceListRecord[];
}

export function documentsByKind({
  workshop,
  blank,
  artwork,
  job,
  priceList,
}: DocumentsState<DocumentBodies>['kinds']): DocumentsByKind {
  return {
    workshop: workshop.bodies[WORKSHOP_ID] ?? null,
    blanks: blank.bodies,
    artworks: artwork.bodies,
    jobs: keptJobs(job.documents),
    lists: keptLists(priceList.documents),
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

const keptList = madeOnce(
  ({ id, body, updatedAt }: Stored<'priceList', PriceList>): PriceListRecord => ({
    id,
    list: body,
    updatedAt,
  }),
);
const keptLists = madeOnce((documents: readonly Stored<'priceList', PriceList>[]) =>
  documents.map(keptList).sort(newest),
);
