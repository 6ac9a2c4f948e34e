import type { PictureFile, SheetsToPrint } from '@/lib/exports/sheetsToPrint';
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
  /** By artwork id. */
  readonly pictures: ReadonlyMap<string, PictureFile>;
}

/** @returns the sheets of a job as pages; prints without a kept file leave their place empty. */
export function sheetsFile({ input, paper, sheets, pages, pictures }: FileOptions): SheetsToPrint {
  return {
    title: `${input.job.name}: sheets`,
    widthMm: paper.widthMm,
    pictures,
    sheets: sheets.flatMap(({ count, pieces, lengthMm }) => {
      const page = {
        heightMm: lengthMm ?? paper.heightMm,
        pieces: pieces.map((piece) => {
          const { artworkId, fit, flipped, shown } = namedPrint(input, piece);
          const { xMm, yMm, widthMm, heightMm, turned } = piece;
          const picture = pictures.has(artworkId) ? artworkId : null;
          return { xMm, yMm, widthMm, heightMm, turned, picture, fit, flipped, shown };
        }),
      };
      return Array.from({ length: pages === 'every' ? count : 1 }, () => page);
    }),
  };
}
