import type { Placement, Print } from '@/shared/schemas/job';
import type { Picture } from '@/shared/schemas/picture';
import { type PlacedPicture, placeInBox } from './placeInBox';

/** How a picture comes out in one print. */
export interface PictureInPrint extends PlacedPicture {
  /** Left bare in the box, both sides together. */
  readonly bareMm: { readonly across: number; readonly down: number };
  /** Cut off the picture as printed, both sides together. */
  readonly cutMm: { readonly across: number; readonly down: number };
  /** Paper that fully clear edges of the picture take in this print; null where there are none to speak of. */
  readonly clearMm: { readonly across: number; readonly down: number } | null;
  /** Size of what is left without those edges. */
  readonly trimmedMm: { readonly width: number; readonly height: number } | null;
}

/** Clear edges narrower than this, both sides together, save no paper. */
const WORTH_TRIMMING_MM = 2;

/** @returns size, cropping, bare strips and clear edges of a picture in the box of its print. */
export function placementOfPicture(
  picture: Pick<Picture, 'width' | 'height' | 'content'>,
  print: Pick<Print, 'widthMm' | 'heightMm'>,
  fit: Placement['fit'],
): PictureInPrint {
  const placed = placeInBox(picture, print, fit);
  const mmAcross = placed.widthMm / placed.crop.width;
  const mmDown = placed.heightMm / placed.crop.height;
  const { content } = picture;
  const clear =
    fit === 'fill' || content === null
      ? null
      : {
          across: (picture.width - content.width) * mmAcross,
          down: (picture.height - content.height) * mmDown,
        };
  const isWorthIt = clear !== null && Math.max(clear.across, clear.down) >= WORTH_TRIMMING_MM;
  return {
    ...placed,
    bareMm: { across: print.widthMm - placed.widthMm, down: print.heightMm - placed.heightMm },
    cutMm: {
      across: (picture.width - placed.crop.width) * mmAcross,
      down: (picture.height - placed.crop.height) * mmDown,
    },
    clearMm: isWorthIt ? clear : null,
    trimmedMm: isWorthIt
      ? { width: placed.widthMm - clear.across, height: placed.heightMm - clear.down }
      : null,
  };
}
