import type { SheetsToPrint } from '@/lib/exports/sheetsToPrint';
import { ownEntry } from '@/lib/job/ownEntry';
import type { PlannedSheet } from '@/lib/layout/apartSheets';
import type { JobInput } from '@/shared/schemas/request';
import type { Sheet } from '@/shared/schemas/workshop';
import { namedPrint } from './sheetNames';

/** More pages than this are no file to send to a printer. */
export const MOST_PAGES = 1000;

interface FileOptions {
  readonly input: JobInput;
  readonly paper: Sheet;
  readonly sheets: readonly PlannedSheet[];
  /** Every sheet, or one of each kind. */
  readonly pages: 'every' | 'oneOfEach';
}

/** @returns the sheets of a job as pages, pictures by artwork id; prints without a kept file leave their place empty. */
export function sheetsFile({ input, paper, sheets, pages }: FileOptions): SheetsToPrint {
  return {
    title: `${input.job.name}: sheets`,
    widthMm: paper.widthMm,
    sheets: sheets.map(({ count, pieces, lengthMm }) => ({
      count: pages === 'every' ? count : 1,
      heightMm: lengthMm ?? paper.heightMm,
      pieces: pieces.map((piece) => {
        const { artworkId, fit, flipped, shown } = namedPrint(input, piece);
        const { xMm, yMm, widthMm, heightMm, turned } = piece;
        const picture = ownEntry(input.artworks, artworkId)?.picture == null ? null : artworkId;
        return { xMm, yMm, widthMm, heightMm, turned, picture, fit, flipped, shown };
      }),
    })),
  };
}
