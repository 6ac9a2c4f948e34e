import { jobSheetTable } from '@/app/_words/docket/jobSheetTable';
import { ownEntry } from '@/lib/job/ownEntry';
import type { SheetPlacement } from '@/lib/jobSheet/jobSheet';
import type { PicturePair } from '@/lib/papers/paper';
import { apart } from '@/lib/papers/words/labelsFor';
import { pictureOf, printedSize } from '@/lib/quotes/goodsOf';
import type { JobInput } from '@/shared/schemas/request';

/**
 * A print as it lies on the paper, and as it is seen on the piece: a sheet that is not mirrored is found before it is
 * pressed. Where no picture is kept an F stands for it.
 *
 * @param isNamed whether there is room to call it by its name and say where it lies so
 * @returns null where the artwork is gone
 */
export function picturePair(
  { artworks }: Pick<JobInput, 'artworks'>,
  { placement, prints }: SheetPlacement,
  isNamed: boolean,
): PicturePair | null {
  const artwork = ownEntry(artworks, placement.artworkId);
  const [first] = prints;
  if (artwork === undefined || first === undefined) return null;
  const picture = pictureOf(artwork);
  // The file may lie mirrored by itself; what the printer is told turns it once more.
  const isMirrored = placement.mirror !== artwork.mirrored;
  const { onPaper, lies, asSeen, noPictureOf } = jobSheetTable;
  return {
    under: !isNamed ? '' : picture === null ? noPictureOf(apart(artwork.name)) : apart(artwork.name),
    picture: picture?.fileId ?? null,
    ...printedSize(placement, artwork, first),
    onPaper: {
      caption: isNamed ? onPaper(isMirrored) : lies(isMirrored),
      isFlipped: placement.mirror,
      reads: isMirrored ? 'reversed' : 'right',
    },
    asSeen: { caption: asSeen, isFlipped: !placement.mirror, reads: isMirrored ? 'right' : 'reversed' },
  };
}
