import type { DocumentBodies } from '@/app/_store/documentRegistry';
import type { DocumentsState } from '@/app/_store/documentsState';
import type { Artwork } from '@/shared/schemas/artwork';
import type { Blank } from '@/shared/schemas/blank';
import type { Job } from '@/shared/schemas/job';
import type { PriceList } from '@/shared/schemas/priceList';
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

/** The maker's documents sorted by what they are. */
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

export function documentsByKind(documents: DocumentsState<DocumentBodies>['documents']): DocumentsByKind {
  const blanks: Record<string, Blank> = {};
  const artworks: Record<string, Artwork> = {};
  const jobs: JobRecord[] = [];
  const lists: PriceListRecord[] = [];
  let workshop: Workshop | null = null;
  for (const document of documents) {
    switch (document.kind) {
      case 'workshop':
        if (document.id === WORKSHOP_ID) workshop = document.body;
        break;
      case 'blank':
        blanks[document.id] = document.body;
        break;
      case 'artwork':
        artworks[document.id] = document.body;
        break;
      case 'job':
        jobs.push({ id: document.id, job: document.body, updatedAt: document.updatedAt });
        break;
      case 'priceList':
        lists.push({ id: document.id, list: document.body, updatedAt: document.updatedAt });
        break;
      default:
        document satisfies never;
    }
  }
  const newest = (a: { updatedAt: number }, b: { updatedAt: number }) => b.updatedAt - a.updatedAt;
  return { workshop, blanks, artworks, jobs: jobs.sort(newest), lists: lists.sort(newest) };
}
