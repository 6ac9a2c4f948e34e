import type { Where } from '@/shared/finding';

/**
 * The address of the field a finding points at, for what is typed on another screen than the job's own.
 *
 * @returns null for fields of a job, its artworks and requests
 */
export function fieldAddress({ document, id, path }: Where): string | null {
  if (document === 'workshop') return `/workshop#${workshopFieldId(path)}`;
  return document === 'blank' && id !== undefined ? `/blanks#${blankFieldId(id, path)}` : null;
}

type Path = readonly (string | number)[];

/** The id of the element in which a field of the workshop is typed. */
export const workshopFieldId = (path: Path): string => ['workshop', ...path].join('-');

/** The id of the element in which a field of a blank is typed. */
export const blankFieldId = (id: string, path: Path): string => ['blank', id, ...path].join('-');

/** The id of the element in which a field of the stall day on the screen is typed. */
export const stallFieldId = (path: Path): string => ['stall', ...path].join('-');

/** The id of the element in which a field of the job on the screen is typed. */
export const jobFieldId = (path: Path): string => ['job', ...path].join('-');
