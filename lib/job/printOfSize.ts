import type { Placement } from '@/shared/schemas/job';

/**
 * The print a size gets: the entry that names it, else the one that stands for all the rest.
 *
 * @returns index into `prints`, or null where no entry covers the size
 */
export function printOfSize(placement: Pick<Placement, 'prints'>, size: string): number | null {
  const named = placement.prints.findIndex(({ sizes }) => sizes?.includes(size) ?? false);
  if (named >= 0) return named;
  const rest = placement.prints.findIndex(({ sizes }) => sizes === null);
  return rest >= 0 ? rest : null;
}
