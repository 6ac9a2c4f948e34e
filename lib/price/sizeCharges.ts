import { type MinorUnits, toMinor } from '@/shared/money';
import type { ResolvedLine } from '../check/checkedJob';

/**
 * What each size of a line adds to the maker's own price of a break: the up-charge that is typed for it, else the
 * largest that the suggestions of any break come to, so that one charge holds for the whole list.
 *
 * @param suggestions one list for each break, one price for each size of the line, whole minor units
 * @param currency ISO 4217 code
 * @returns whole minor units, 0 for the first size unless one is typed for it; all 0 where one price covers all
 */
export function sizeCharges(
  { line, sizes }: ResolvedLine,
  suggestions: readonly (readonly MinorUnits[])[],
  currency: string,
): readonly MinorUnits[] {
  return sizes.map(({ size }, index) => {
    if (line.upCharging === 'averaged') return 0 as MinorUnits;
    const typed = line.upCharges.filter((charge) => charge.size === size);
    if (typed.length > 0)
      return toMinor(
        typed.reduce((sum, { amount }) => sum + amount, 0),
        currency,
      );
    const added = suggestions.map((ofBreak) => (ofBreak[index] ?? 0) - (ofBreak[0] ?? 0));
    return Math.max(...added) as MinorUnits;
  });
}
