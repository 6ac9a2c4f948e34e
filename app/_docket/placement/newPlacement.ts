import { freshName } from '@/app/_docket/common/freshName';
import type { Placement } from '@/shared/schemas/job';

/**
 * Another placement of a line, pressed like its last one.
 *
 * @param makeId gives a new id each time
 */
export function newPlacement(placements: readonly Placement[], makeId: () => string): Placement {
  const last = placements.at(-1);
  if (last === undefined) throw new RangeError('a line has at least one placement to go by');
  const names = placements.map(({ name }) => name);
  return { ...last, id: makeId(), name: freshName('Placement', names), testPresses: 0 };
}
