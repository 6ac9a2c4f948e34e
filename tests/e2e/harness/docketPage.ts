import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';

/** How long a figure may take on a busy machine; nothing is timed by it. */
const PATIENCE_MS = 15_000;

/** Waits until the docket shows a price. */
export async function priced(page: Page): Promise<void> {
  await page.getByRole('slider').first().waitFor({ timeout: PATIENCE_MS });
}

/** What the price bar says, in one line. */
export async function priceBarText(page: Page): Promise<string> {
  const text = await page.getByRole('region', { name: 'Price', exact: true }).textContent();
  return (text ?? '').replace(/\s+/g, ' ');
}

/** Polls the price bar until it says something. */
export async function expectPriceBar(page: Page, pattern: RegExp): Promise<void> {
  await expect.poll(() => priceBarText(page), { timeout: PATIENCE_MS }).toMatch(pattern);
}

/** The section of the docket with a heading. */
export const section = (page: Page, name: string): Locator => page.getByRole('region', { name, exact: true });

/** Waits until the page says that what was typed is on the device. */
export async function kept(page: Page): Promise<void> {
  await page.getByText(/^Kept/).first().waitFor({ timeout: PATIENCE_MS });
}

/** Types into a field as a person does, replacing what is there. */
export async function type(field: Locator, text: string): Promise<void> {
  await field.fill('');
  await field.pressSequentially(text);
}
