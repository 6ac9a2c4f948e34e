import { freshName } from '@/app/_docket/common/freshName';
import type { Line } from '@/shared/schemas/job';

/**
 * Another line after those a job has: made like the last one, with no quantities and no price yet.
 *
 * @param makeId gives a new id each time
 */
export function newLine(lines: readonly Line[], makeId: () => string): Line {
  const last = lines.at(-1);
  if (last === undefined) throw new RangeError('a job has at least one line to go by');
  const names = lines.map(({ name }) => name);
  return {
    ...last,
    id: makeId(),
    name: freshName('Line', names),
    quantities: [],
    orderedQuantity: null,
    askedPrice: null,
    askedStart: null,
    upCharges: [],
    ownPrices: [],
    marketCeiling: null,
    placements: last.placements.map((placement) => ({ ...placement, id: makeId() })),
  };
}
