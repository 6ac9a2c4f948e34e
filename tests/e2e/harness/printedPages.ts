import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { Page } from 'playwright-core';

/** A page of paper as the browser prints it. */
interface PrintedPage {
  /** In whole points: A4 is 595 × 842 or, by the browser's own name for it, 596 × 843; letter 612 × 792. */
  readonly size: string;
  readonly text: string;
  /** Whether every letter lies on the page. */
  readonly isInside: boolean;
}

interface Printed {
  /** The title it is saved under. */
  readonly title: string;
  readonly pages: readonly PrintedPage[];
}

/** What the browser prints, page by page; on the paper the page asks for, or else on this one. */
export async function printedPages(page: Page, paper: 'A4' | 'Letter'): Promise<Printed> {
  const data = new Uint8Array(await page.pdf({ preferCSSPageSize: true, format: paper }));
  const pdf = await getDocument({ data, verbosity: 0 }).promise;
  const pages = await Promise.all(Array.from({ length: pdf.numPages }, (_, index) => pdf.getPage(index + 1)));
  const { info } = await pdf.getMetadata();
  return {
    title: 'Title' in info ? String(info.Title) : '',
    pages: await Promise.all(
      pages.map(async (one) => {
        const [, , width = 0, height = 0] = one.view;
        const items = (await one.getTextContent()).items.flatMap((item) => ('str' in item ? [item] : []));
        return {
          size: `${Math.round(width)} × ${Math.round(height)}`,
          text: items.map(({ str }) => str).join(' '),
          isInside: items
            .filter(({ str }) => str.trim() !== '')
            .every(({ transform: [, , , , x, y], width: across }) => x >= 0 && x + across <= width && y >= 0),
        };
      }),
    ),
  };
}
