import { coverageTotal } from '@/lib/ink/coverageTotal';
import { totalShare, withBlackShare } from '@/lib/ink/generateBlack';
import type { Artwork } from '@/shared/schemas/artwork';
import { TYPICAL_TOTAL_COVERAGE } from '@/shared/tables/typicalRates';
import type { TotalCoverage } from './checkedJob';

/**
 * The maker's own figure, else what was read from the file, else the typical one.
 *
 * @param blackShare of the grey that is printed with black, 0 to 1
 */
export function coverageOfArtwork(
  { coverage, picture }: Pick<Artwork, 'coverage' | 'picture'>,
  blackShare: number,
): TotalCoverage {
  if (coverage !== null) return { value: coverageTotal(coverage), origin: 'yours' };
  if (picture !== null) {
    return { value: totalShare(withBlackShare(picture.coverage, blackShare)), origin: 'read', blackShare };
  }
  return { value: TYPICAL_TOTAL_COVERAGE, origin: 'typical' };
}
