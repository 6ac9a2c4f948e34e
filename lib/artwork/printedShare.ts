import { totalShare, withBlackShare } from '@/lib/ink/generateBlack';
import type { Placement, Print } from '@/shared/schemas/job';
import type { Picture } from '@/shared/schemas/picture';
import { meanWithin } from './meanWithin';
import { placeInBox } from './placeInBox';

/** What of a picture tells where its ink lies. */
interface PictureInk extends Pick<Picture, 'width' | 'height' | 'coverage' | 'grey'> {
  readonly inkAcross: readonly number[];
  readonly inkDown: readonly number[];
}

/**
 * What the ink of a picture is multiplied by to get the ink of its print: bare strips beside it thin it out,
 * and cropping leaves the ink of what is shown. Where nobody measured the grey it is taken to lie as the rest does.
 *
 * @param blackShare share of the grey that the printer prints with black, 0–1
 * @returns mean ink over the print's box ÷ mean ink over the picture's own
 */
export function printedShare(
  picture: PictureInk,
  print: Pick<Print, 'widthMm' | 'heightMm'>,
  fit: Placement['fit'],
  blackShare: number,
): number {
  const { crop, boxShare } = placeInBox(picture, print, fit);
  if (fit !== 'fill') return boxShare;
  const shown = (across: readonly number[], down: readonly number[]) =>
    meanWithin(across, crop.x / picture.width, crop.width / picture.width) *
    meanWithin(down, crop.y / picture.height, crop.height / picture.height);
  const { coverage, inkAcross, inkDown, grey } = picture;
  const full = shown(inkAcross, inkDown);
  const total = totalShare(withBlackShare(coverage, blackShare));
  if (grey === null || total === 0) return full;
  // What less black adds to the ink lies where the grey does.
  const added = total - totalShare(coverage);
  return full + (added / total) * (shown(grey.across, grey.down) - full);
}
