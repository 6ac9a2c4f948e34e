import type { ResolvedLine, ResolvedSize } from '@/lib/job/checkedJob';
import { printOfSize } from '@/lib/job/printOfSize';

/** Sizes of a line with the same print sizes in every placement: only their blanks differ. */
interface PrintGroup {
  /** The print of each placement, as places in their lists. */
  readonly key: string;
  readonly sizes: readonly [ResolvedSize, ...ResolvedSize[]];
}

/** @returns the groups of a line in the order of their first sizes. */
export function printGroups(line: ResolvedLine): readonly PrintGroup[] {
  const groups = new Map<string, [ResolvedSize, ...ResolvedSize[]]>();
  for (const size of line.sizes) {
    const key = printGroupOf(line, size);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [size]);
    else group.push(size);
  }
  return [...groups].map(([key, sizes]) => ({ key, sizes }));
}

/** @returns the key of the group a size belongs to. */
export const printGroupOf = (line: ResolvedLine, size: ResolvedSize): string =>
  line.placements.map(({ placement }) => printOfSize(placement, size.size)).join(' ');
