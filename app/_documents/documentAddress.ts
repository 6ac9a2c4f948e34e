import type { Stored } from '@/shared/schemas/stored';
import type { JobRecord } from './documentsByKind';
import { fieldAddress, jobFieldId } from './fieldAddress';

type Path = readonly (string | number)[];

/**
 * The address of a document's screen, and of one of its fields where there is a place in it. An artwork stands on the
 * screen of a job that shows it.
 *
 * @returns null for an artwork that no job shows
 */
export function documentAddress(
  { kind, id, path }: { readonly kind: Stored['kind']; readonly id: string; readonly path: Path },
  jobs: readonly JobRecord[],
): string | null {
  switch (kind) {
    case 'job':
      return path.length === 0 ? `/jobs/${id}` : `/jobs/${id}#${jobFieldId(path)}`;
    case 'workshop':
      return path.length === 0 ? '/workshop' : fieldAddress({ document: 'workshop', path });
    case 'blank':
      return fieldAddress({ document: 'blank', id, path });
    case 'priceList':
      return `/price-lists/${id}`;
    case 'order':
      return `/orders/${id}`;
    case 'customer':
      return `/customers/${id}`;
    case 'stallDay':
      return `/stall/${id}`;
    case 'run':
      return `/making/${id}`;
    case 'buyingList':
      return `/making/buying/${id}`;
    case 'supplier':
    case 'consumable':
      return '/making/suppliers';
    case 'artwork': {
      const shows = jobs.find(({ job }) =>
        job.lines.some(({ placements }) => placements.some(({ artworkId }) => artworkId === id)),
      );
      return shows === undefined ? null : `/jobs/${shows.id}`;
    }
    default:
      return null;
  }
}
