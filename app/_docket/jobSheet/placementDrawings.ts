import { jobSheetTable } from '@/app/_words/docket/jobSheetTable';
import { ownEntry } from '@/lib/job/ownEntry';
import type { SheetPlacement } from '@/lib/jobSheet/jobSheet';
import { drawingsOf } from '@/lib/papers/bodies/goods';
import type { Drawing, Reads } from '@/lib/papers/paper';
import { englishLabels } from '@/lib/papers/words/englishLabels';
import { figuresOf } from '@/lib/papers/words/figures';
import { pictureOf, printedSize, shapes } from '@/lib/quotes/goodsOf';
import type { JobInput } from '@/shared/schemas/request';

/**
 * Where a print sits on its piece, which way it reads there: the first of its sizes is drawn, all are told.
 *
 * @param reads as it is seen; null where nobody knows
 * @param isNamed whether there is room to say which side it is
 */
export function placementDrawings(
  { job, blanks, artworks, workshop }: JobInput,
  { lineId, placement, prints }: SheetPlacement,
  { reads, isNamed }: { readonly reads: Reads | null; readonly isNamed: boolean },
): readonly Drawing[] {
  const [first] = prints;
  const line = job.lines.find(({ id }) => id === lineId);
  const blank = ownEntry(blanks, line?.blankId ?? '');
  const artwork = ownEntry(artworks, placement.artworkId);
  if (first === undefined) return [];
  const print = {
    placementId: placement.id,
    name: placement.name,
    position: placement.position,
    sizes: null,
    ...(artwork === undefined
      ? { widthMm: first.widthMm, heightMm: first.heightMm }
      : printedSize(placement, artwork, first)),
    dropFromCollarMm: placement.dropFromCollarMm,
    artwork: {
      artworkId: placement.artworkId,
      name: artwork?.name ?? placement.name,
      version: artwork?.version ?? 1,
    },
    // A file that lies mirrored would show the piece the wrong way round.
    picture: artwork === undefined || artwork.mirrored ? null : pictureOf(artwork),
  };
  const { locale, units, currency } = workshop;
  const drawn = drawingsOf(
    { shape: shapes[blank?.kind ?? 'small'], prints: [print] },
    {
      labels: englishLabels,
      figures: figuresOf({ language: 'en', locale, length: units.length, currency }),
    },
  );
  if (reads === null) return drawn;
  return drawn.map(({ caption, prints: all, ...drawing }) => ({
    ...drawing,
    caption: isNamed ? jobSheetTable.drawnAsSeen(caption) : jobSheetTable.asSeen,
    prints: all.map((one) => ({ ...one, reads })),
  }));
}
