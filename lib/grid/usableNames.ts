import type { OwnRow } from '@/shared/schemas/ownRow';
import { expandRows } from './expandRows';
import type { GridRow } from './rowTypes';
import { namesIn } from './tokenizeFormula';

/**
 * The rows and rates that a maker's own formula may name: all but the own rows and what stands on them, which
 * would lead back to it.
 *
 * @param ownRows all own rows of the job
 * @param placements most placements on one line, 1 to 4
 * @returns rates and values of the job first, then those of a line, then those of a piece
 */
export function usableNames(ownRows: readonly OwnRow[], placements: number): readonly GridRow[] {
  const { job, line, case: one } = expandRows({ placements, presses: 1, ownRows });
  const rows = [...job, ...line, ...one];
  const barred = new Set(rows.filter(({ family }) => family === 'own').map(({ id }) => id));
  const standsOnBarred = (row: GridRow): boolean =>
    !barred.has(row.id) && namesIn(row.formula ?? '').some((name) => barred.has(name));
  for (let next = rows.filter(standsOnBarred); next.length > 0; next = rows.filter(standsOnBarred)) {
    for (const { id } of next) barred.add(id);
  }
  return rows.filter(({ id }) => !barred.has(id));
}
