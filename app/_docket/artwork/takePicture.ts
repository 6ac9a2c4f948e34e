import type { Artwork } from '@/shared/schemas/artwork';
import type { Picture } from '@/shared/schemas/picture';

/** The artwork with a picture that was read: pixels and ink are the picture's from now on. */
export const takePicture = (artwork: Artwork, picture: Picture, approved: number | null): Artwork => ({
  ...withoutPicture(artwork, picture.fileId, approved),
  // A drawing is clean at any size.
  pixels: picture.format === 'svg' ? null : { width: picture.width, height: picture.height },
  coverage: null,
  picture,
});

/**
 * The artwork without the picture it has. Where the customer approved that, what comes after it is another version: a
 * yes to one picture is none to the next.
 *
 * @param nextFileId file of the picture that follows; null where none does
 * @param approved the version approved; null where none is
 */
export const withoutPicture = (
  artwork: Artwork,
  nextFileId: string | null,
  approved: number | null,
): Artwork => ({
  ...artwork,
  picture: null,
  version:
    approved === artwork.version && artwork.picture !== null && artwork.picture.fileId !== nextFileId
      ? artwork.version + 1
      : artwork.version,
});

/** The artwork with its own picture read once more: what the maker said of it, and typed instead of it, stays. */
export const readAgain = (artwork: Artwork, picture: Picture): Artwork =>
  artwork.picture?.fileId === picture.fileId
    ? {
        ...artwork,
        picture: { ...picture, trimmed: artwork.picture.trimmed, accepted: artwork.picture.accepted },
      }
    : artwork;
