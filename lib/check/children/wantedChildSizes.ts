import type { ResolvedLine } from '@/lib/job/checkedJob';
import type { ChildSize } from './ageSize';
import { childSizes } from './childSizes';

/**
 * The wanted sizes of a line that are children's by their name. Clothing only: 104 says nothing on a panel.
 *
 * @returns by name; all sizes of a garment for children count as youth where their name says nothing
 */
export function wantedChildSizes({ blank, sizes }: ResolvedLine): ReadonlyMap<string, ChildSize> {
  if (blank.kind !== 'garment') return new Map();
  const known = childSizes(
    blank.sizes.map(({ name }) => name),
    blank.forChildren,
  );
  return new Map(
    sizes.flatMap(({ size }) => {
      const child = known.get(size) ?? (blank.forChildren === true && known.size === 0 ? 'youth' : null);
      return child === null ? [] : [[size, child] as const];
    }),
  );
}
