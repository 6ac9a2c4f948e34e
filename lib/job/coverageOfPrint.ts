import { printedShare } from '@/lib/artwork/printedShare';
import type { ResolvedPlacement } from './checkedJob';
import type { SizeMm } from './tidyLength';

/** @returns mean ink over the box of one print, 0–4: of a picture that was read, as it lies in it. */
export function coverageOfPrint(
  { artwork, placement, totalCoverage }: ResolvedPlacement,
  print: SizeMm,
): number {
  const { picture } = artwork;
  if (totalCoverage.origin !== 'read' || picture === null) return totalCoverage.value;
  return totalCoverage.value * printedShare(picture, print, placement.fit, totalCoverage.blackShare);
}
