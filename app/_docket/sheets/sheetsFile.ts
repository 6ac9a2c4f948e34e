import { wasteLineWords } from '@/app/_words/docket/wasteWords';
import type { SheetsToPrint, SheetWaste } from '@/lib/exports/sheetsToPrint';
import { ownEntry } from '@/lib/job/ownEntry';
import type { PlannedSheet } from '@/lib/layout/apartSheets';
import type { JobInput } from '@/shared/schemas/request';
import type { Sheet } from '@/shared/schemas/workshop';
import { namedPrint } from './sheetNames';
import { type Waste, wasteOf } from './wasteOf';

/** More pages than this are no file to send to a printer. */
export const MOST_PAGES = 1000;

interface FileOptions {
  readonly input: JobInput;
  readonly paper: Sheet;
  readonly sheets: readonly PlannedSheet[];
  /** Every sheet, or one of each kind. */
  readonly pages: 'every' | 'oneOfEach';
  /** Whether a line is to stand in the waste. */
  readonly withLine: boolean;
}

/** @returns the sheets of a job as pages, pictures by artwork id; prints without a kept file leave their place empty. */
export function sheetsFile({ input, paper, sheets, pages, withLine }: FileOptions): SheetsToPrint {
  const wastes = withLine ? wasteOf(input, paper, sheets) : [];
  const total = sheets.reduce((sum, { count }) => sum + count, 0);
  let first = 1;
  const lineOf = (words: string) => ({ name: input.job.name, words: [words, wasteLineWords.advice] });
  const linesOf = (count: number): SheetWaste['lines'] => {
    const from = first;
    first += count;
    return pages === 'oneOfEach'
      ? [lineOf(wasteLineWords.copies(count))]
      : Array.from({ length: count }, (_, at) =>
          lineOf(wasteLineWords.sheet(from + at, total, paper.form === 'roll')),
        );
  };
  return {
    title: `${input.job.name}: sheets`,
    widthMm: paper.widthMm,
    sheets: sheets.map(({ count, pieces, lengthMm }, at) => ({
      count: pages === 'every' ? count : 1,
      heightMm: lengthMm ?? paper.heightMm,
      pieces: pieces.map((piece) => {
        const { artworkId, fit, flipped, shown } = namedPrint(input, piece);
        const { xMm, yMm, widthMm, heightMm, turned } = piece;
        const picture = ownEntry(input.artworks, artworkId)?.picture == null ? null : artworkId;
        return { xMm, yMm, widthMm, heightMm, turned, picture, fit, flipped, shown };
      }),
      ...wastePart(wastes[at], linesOf(count)),
    })),
  };
}

const wastePart = (waste: Waste | undefined, lines: SheetWaste['lines']) =>
  waste === undefined || (waste.strip === null && waste.marks.length === 0)
    ? {}
    : { waste: { ...waste, lines: waste.strip === null ? [] : lines } };
