import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { kept, unfold } from './docketPage';

/**
 * What screens say of the store that the build before left. By hand from what was typed into it: refills of 190.5 and
 * 205 mL after the first; 60 + 40 + 40 + 24 + 6 prints between; shirts counted 14 M, 30 L and 3 2XL, mugs 36; a list
 * issued twice. Anything that were counted twice would show in each.
 */
export async function expectFormerFigures(page: Page): Promise<void> {
  await page.goto('/workshop#ink-refill');
  await page.getByText('170 prints between refills took 395.5 mL.').waitFor();
  await unfold(page.locator('main'), /^Older entries/);
  await page.getByRole('button', { name: 'Take back Refill of 2 Oct 2026', exact: true }).waitFor();
  await expect.poll(() => page.getByRole('button', { name: /^Take back Refill of / }).count()).toBe(3);
  await page.goto('/blanks');
  for (const [blank, counted] of [
    ['White coated mug, 330 mL', ['330 mL: Counted 36']],
    ['White shirt, 100 % polyester', ['2XL: Counted 3', 'M: Counted 14', 'L: Counted 30']],
  ] as const) {
    await page.getByRole('button', { name: blank }).first().click();
    for (const words of counted) {
      await page.getByRole('button', { name: `Take back ${words}`, exact: true }).waitFor();
    }
  }
  await expect.poll(() => page.getByRole('button', { name: /^Take back / }).count()).toBe(4);
  await page.goto('/price-lists/club-prices');
  await page.getByRole('article', { name: 'Price list, version 2', exact: true }).waitFor();
  for (const version of ['Version 2, 26 Nov 2026', 'Version 1, 26 Nov 2026']) {
    await expect.poll(() => page.getByRole('option', { name: version, exact: true }).count()).toBe(1);
  }
  await kept(page);
}
