import type { Page } from 'playwright-core';
import { expect } from 'vitest';

/** A figure that opens to its sum closes the one before it. */
const FIGURE = '[data-opens="sum"]';
/** Of forms of which one is open at a time, each is opened once. */
const PRESSED = '[data-pressed]';
const FOLDED = `main details:not([open]) > summary, main button[aria-expanded="false"]:not(${FIGURE}, ${PRESSED})`;

/** Far more than any page has. */
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
    const next = await folded.first().elementHandle();
    await next?.evaluate((element) => element.setAttribute('data-pressed', ''));
    await next?.click();
    opened += 1;
    // One that opens nothing would be pressed for ever.
    expect(opened, 'folds of one page').toBeLessThan(MOST);
  }
  return opened;
}
