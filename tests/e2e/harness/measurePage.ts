import type { Page } from 'playwright-core';

/** How much of a page there is to take in, before anything is unfolded. */
export interface PageMeasure {
  readonly heightPx: number;
  /** Words that are seen in the content: no closed lists, nothing that is only spoken. */
  readonly words: number;
  /** Stops of the Tab key on the whole page. */
  readonly tabStops: number;
  /** What is written under 13 px. */
  readonly small: readonly string[];
}

/** Measures the page as it stands now. */
export const measurePage = (page: Page): Promise<PageMeasure> =>
  page.evaluate(() => {
    const isSeen = (element: Element) => {
      const { visibility, display } = getComputedStyle(element);
      const { width, height } = element.getBoundingClientRect();
      return visibility !== 'hidden' && display !== 'none' && width > 1 && height > 1;
    };
    const content = document.querySelector('main') ?? document.body;
    const walker = document.createTreeWalker(content, NodeFilter.SHOW_TEXT);
    const small: string[] = [];
    let words = 0;
    for (let text = walker.nextNode(); text !== null; text = walker.nextNode()) {
      const parent = text.parentElement;
      if (parent === null || parent.closest('option, script, style, .visuallyHidden') !== null) continue;
      const said = (text.textContent ?? '').match(/\S+/g) ?? [];
      if (said.length === 0 || !isSeen(parent)) continue;
      words += said.length;
      // Letters on a drawn sheet are part of the picture.
      const isDrawn = parent.closest('svg[role="img"]') !== null;
      if (!isDrawn && Number.parseFloat(getComputedStyle(parent).fontSize) < 13) small.push(said.join(' '));
    }
    const stops = [
      ...document.querySelectorAll<HTMLElement>(
        'a[href], button, input, select, textarea, summary, [tabindex]',
      ),
    ];
    return {
      heightPx: document.documentElement.scrollHeight,
      words,
      tabStops: stops.filter((one) => one.tabIndex >= 0 && isSeen(one)).length,
      small: [...new Set(small)],
    };
  });
