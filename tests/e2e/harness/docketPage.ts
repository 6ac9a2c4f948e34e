import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';

/** Waits until the docket shows a price. */
export async function priced(page: Page): Promise<void> {
  await page.getByRole('slider').first().waitFor();
}

/** Waits until every section of the docket has its figures and the curve its drawing: the page at its full length. */
export async function filled(page: Page): Promise<void> {
  await priced(page);
  await drawn(page);
  // The last section of figures is the last to be worked out.
  await section(page, 'Ways of selling').getByText('best;', { exact: false }).waitFor();
  await expect.poll(() => page.locator('main [aria-busy="true"]').count()).toBe(0);
}

/** The curve is drawn once it comes near the screen; the reader stays where they are. */
async function drawn(page: Page): Promise<void> {
  const curve = section(page, 'Batch');
  await curve.waitFor();
  const before = await page.evaluate(() => window.scrollY);
  await curve.scrollIntoViewIfNeeded();
  await curve.locator('svg[data-chart]').waitFor();
  await page.evaluate((y) => window.scrollTo(0, y), before);
}

/** What the price bar says, in one line. */
export async function priceBarText(page: Page): Promise<string> {
  const text = await page.getByRole('region', { name: 'Price', exact: true }).textContent();
  return (text ?? '').replace(/\s+/g, ' ');
}

/** Polls the price bar until it says something. */
export async function expectPriceBar(page: Page, pattern: RegExp): Promise<void> {
  await expect.poll(() => priceBarText(page)).toMatch(pattern);
}

/** The section of the docket with a heading. */
export const section = (page: Page, name: string): Locator => page.getByRole('region', { name, exact: true });

/** Opens a fold of a section, unless it stands open already. */
export async function unfold(part: Locator, name: string | RegExp): Promise<void> {
  const fold = part.getByRole('button', typeof name === 'string' ? { name, exact: true } : { name });
  await fold.waitFor();
  if ((await fold.getAttribute('aria-expanded')) === 'false') await fold.click();
}

/** Waits until the header says that what was typed is on the device; other parts of a page have such words as well. */
export async function kept(page: Page): Promise<void> {
  await page.getByRole('banner').getByText(/^Kept/).first().waitFor();
}

/** Types into a field as a person does, replacing what is there. */
export async function type(field: Locator, text: string): Promise<void> {
  // Never emptied first: an emptied field is an edit of its own, taken or not by how fast the next key comes.
  await field.selectText();
  await field.pressSequentially(text);
}
