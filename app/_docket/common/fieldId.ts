import { jobFieldId } from '@/app/_documents/fieldAddress';
import type { Where } from '@/shared/finding';
import type { Job } from '@/shared/schemas/job';

type Path = readonly (string | number)[];

/** The id of the element in which a field of the job is typed. */
export const fieldId = (path: Path): string => jobFieldId(path);

/**
 * Where on the docket a finding's field stands. Artworks are typed in the first placement that shows them.
 *
 * @returns null for what is typed on another screen
 */
export function fieldIdOf(where: Where, job: Job): string | null {
  if (where.document === 'job') return fieldId(where.path);
  if (where.document !== 'artwork') return null;
  const place = placeOfArtwork(where, job);
  return place === null ? null : fieldId([...place, 'artwork', ...where.path]);
}

function placeOfArtwork({ id, placementId }: Where, { lines }: Job): Path | null {
  const places = lines.flatMap(({ placements }, line) =>
    placements.map((placement, index) => ({ placement, path: ['lines', line, 'placements', index] })),
  );
  const found =
    places.find(({ placement }) => placement.id === placementId && placement.artworkId === id) ??
    places.find(({ placement }) => placement.artworkId === id);
  return found?.path ?? null;
}
