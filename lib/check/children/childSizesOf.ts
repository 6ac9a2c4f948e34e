import type { Blank } from '@/shared/schemas/blank';
import type { ChildSize } from './ageSize';
import { childSizes } from './childSizes';

/**
 * Clothing only: 104 says nothing on a panel. All sizes of a garment for children count as youth where no name of them
 * says anything.
 *
 * @returns what tells of a size of a blank whether it is a child's, and which
 */
export function childSizesOf(blank: Blank): (size: string) => ChildSize | null {
  if (blank.kind !== 'garment') return () => null;
  const known = childSizes(
    blank.sizes.map(({ name }) => name),
    blank.forChildren,
  );
  return (size) => known.get(size) ?? (blank.forChildren === true && known.size === 0 ? 'youth' : null);
}
