import { type PDFDocument, type PDFPage, rgb } from '@cantoo/pdf-lib';

/** Pages that are filled from the top; points. */
export interface Flow {
  readonly pages: readonly PDFPage[];
  readonly page: PDFPage;
  readonly left: number;
  readonly right: number;
  /** Room from here to the foot of the page. */
  readonly room: number;
  readonly wholeRoom: number;
  readonly y: number;
  readonly goTo: (y: number) => void;
  readonly newPage: () => void;
}

const SIZES = { a4: [595.28, 841.89], letter: [612, 792] } as const;
/** From the edge of the page to its lines, points. */
export const SIDE = 42;
const HEAD = 40;
const FOOT = 48;

/** What stands at the head of each further page. */
interface PageHead {
  readonly high: number;
  /** @param top its upper edge */
  readonly draw: (page: PDFPage, top: number) => void;
}

/**
 * Begins a file of pages.
 *
 * @param closer how much nearer to the upper and the lower edge than usual
 */
export function flowPages(
  pdf: PDFDocument,
  paper: keyof typeof SIZES,
  closer = 0,
  again: PageHead | null = null,
): Flow {
  const head = HEAD - closer;
  const foot = FOOT - closer;
  const [width, height] = SIZES[paper];
  const pages = [pdf.addPage([width, height])];
  let y = height - head;
  return {
    pages,
    get page() {
      return pages[pages.length - 1] ?? pdf.addPage([width, height]);
    },
    left: SIDE,
    right: width - SIDE,
    get room() {
      return y - foot;
    },
    wholeRoom: height - head - foot - (again?.high ?? 0),
    get y() {
      return y;
    },
    goTo: (to) => {
      y = to;
    },
    newPage: () => {
      const page = pdf.addPage([width, height]);
      pages.push(page);
      again?.draw(page, height - head);
      y = height - head - (again?.high ?? 0);
    },
  };
}

/** The heavy line under a head. */
export function heavyLine({ page, left, right, y }: Flow): void {
  page.drawLine({ start: { x: left, y }, end: { x: right, y }, thickness: 2.6, color: rgb(0, 0, 0) });
}

/** Where one part is torn from the next. */
export function tearLine({ page, left, right, y }: Flow): void {
  page.drawLine({
    start: { x: left, y },
    end: { x: right, y },
    thickness: 0.8,
    color: rgb(0.35, 0.35, 0.35),
    dashArray: [0.8, 2.2],
  });
}
