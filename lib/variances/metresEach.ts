import type { StandardWork } from '@/shared/schemas/making/runPapers';

/**
 * @param works of a run's standard
 * @returns metres of the roll that count for one sheet; null where a run is printed on cut paper, or on rolls of several
 *   widths, of which a length says nothing
 */
export function metresEach(works: readonly Pick<StandardWork, 'sheets'>[]): number | null {
  const [first, ...others] = new Set(works.map(({ sheets }) => sheets.metresEach ?? null));
  return others.length === 0 ? (first ?? null) : null;
}
