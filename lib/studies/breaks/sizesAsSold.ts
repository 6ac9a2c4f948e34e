import type { ResolvedLine, ResolvedSize } from '@/lib/job/checkedJob';
import { printGroupOf } from '@/lib/price/printGroups';

/**
 * Sizes that cost the same as one, with the pieces of all: what a mix of them costs is worked out once a make.
 *
 * @param names the sizes of the line that are sold alike
 * @param apart true where formulas of the maker may tell sizes apart by more than their blank
 */
export function sizesAsSold(
  line: ResolvedLine,
  names: readonly string[],
  apart: boolean,
): readonly ResolvedSize[] {
  const makes = new Map<string, ResolvedSize>();
  for (const size of line.sizes) {
    if (!names.includes(size.size)) continue;
    const key = apart ? size.size : `${printGroupOf(line, size)} ${size.blankPrice.value}`;
    const known = makes.get(key);
    makes.set(key, known === undefined ? size : { ...known, quantity: known.quantity + size.quantity });
  }
  return [...makes.values()];
}
