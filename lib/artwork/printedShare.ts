import type { Placement, Print } from '@/shared/schemas/job';
import type { Picture } from '@/shared/schemas/picture';
import { meanWithin } from './meanWithin';
import { placeInBox } from './placeInBox';

/** What of a picture tells where its ink lies. */
interface PictureInk extends Pick<Picture, 'width' | 'height'> {
  readonly inkAcross: readonly number[];
  readonly inkDown: readonly number[];
}

/**
 * What the ink of a picture is multiplied by to get the ink of its print: bare strips beside it thin it out,
 * and cropping leaves the ink of what is shown.
 *
 * @returns mean ink over the print's box ÷ mean ink over the picture's own
 */
export function printedShare(
  picture: PictureInk,
  print: Pick<Print, 'widthMm' | 'heightMm'>,
  fit: Placement['fit'],
): number {
  const { crop, boxShare } = placeInBox(picture, print, fit);
  if (fit !== 'fill') return boxShare;
  return (
    meanWithin(picture.inkAcross, crop.x / picture.width, crop.width / picture.width) *
    meanWithin(picture.inkDown, crop.y / picture.height, crop.height / picture.height)
  );
}
