import type { Artwork } from '@/shared/schemas/artwork';
import type { Picture } from '@/shared/schemas/picture';

/** The artwork with a picture that was read: pixels and ink are the picture's from now on. */
export const takePicture = (artwork: Artwork, picture: Picture): Artwork => ({
  ...artwork,
  // A drawing is clean at any size.
  pixels: picture.format === 'svg' ? null : { width: picture.width, height: picture.height },
  coverage: null,
  picture,
});
