import type { Page } from 'playwright-core';
import { expect } from 'vitest';

/** A figure that opens to its sum closes the one before it: it says its name for those who do not see, a fold does not. */
const FIGURE = ':has(> .visuallyHidden)';
const FOLDED = `main details:not([open]) > summary, main button[aria-expanded="false"]:not(${FIGURE})`;

/** More folds than this are not folds: a page whose folds never end is a fault. */
const MOST = 120;

/**
 * Opens every fold of a page, those inside others too.
 *
 * @returns how many there were
 */
export async function unfoldAll(page: Page): Promise<number> {
  const folded = page.locator(FOLDED).filter({ visible: true });
  let opened = 0;
  while ((await folded.count()) > 0) {
    const before = await folded.count();
    await folded.first().click();
    opened += 1;
    expect(opened, 'folds of one page').toBeLessThan(MOST);
    // A press that opens nothing would be pressed for ever; what it opens may hold folds of its own.
    if ((await folded.count()) >= before)
      await page.waitForFunction(() => document.readyState === 'complete');
  }
  return opened;
}
