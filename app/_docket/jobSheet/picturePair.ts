import { jobSheetTable } from '@/app/_words/docket/jobSheetTable';
import { ownEntry } from '@/lib/job/ownEntry';
import type { SheetPlacement } from '@/lib/jobSheet/jobSheet';
import type { PicturePair } from '@/lib/papers/paper';
import { pictureOf, printedSize } from '@/lib/quotes/goodsOf';
import type { JobInput } from '@/shared/schemas/request';

/**
 * A print as it lies on the paper, and as it is seen on the piece: a sheet that is not mirrored is found before it is
 * pressed.
 *
 * @returns null where no picture is kept
 */
export function picturePair(
  { artworks }: Pick<JobInput, 'artworks'>,
  { placement, prints }: SheetPlacement,
): PicturePair | null {
  const artwork = ownEntry(artworks, placement.artworkId);
  const [first] = prints;
  const picture = artwork === undefined ? null : pictureOf(artwork);
  if (artwork === undefined || first === undefined || picture === null) return null;
  // The file may lie mirrored by itself; what the printer is told turns it once more.
  const isMirrored = placement.mirror !== artwork.mirrored;
  const { seenMirrored, seenOnPaper, asSeen } = jobSheetTable;
  return {
    name: artwork.name,
    picture: picture.fileId,
    ...printedSize(placement, artwork, first),
    onPaper: { caption: isMirrored ? seenMirrored : seenOnPaper, isFlipped: placement.mirror },
    asSeen: { caption: asSeen, isFlipped: !placement.mirror },
  };
}
