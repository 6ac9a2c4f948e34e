import type { ResolvedLine } from '@/lib/job/checkedJob';
import type { ChildSize } from './ageSize';
import { childSizesOf } from './childSizesOf';

/** @returns the wanted sizes of a line that are children's, by name. */
export function wantedChildSizes({ blank, sizes }: ResolvedLine): ReadonlyMap<string, ChildSize> {
  const childSize = childSizesOf(blank);
  return new Map(
    sizes.flatMap(({ size }) => {
      const child = childSize(size);
      return child === null ? [] : [[size, child] as const];
    }),
  );
}
