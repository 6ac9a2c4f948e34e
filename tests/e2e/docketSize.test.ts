import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { axe } from '@/tests/e2e/harness/axe';
import { filled, section } from '@/tests/e2e/harness/docketPage';
import { measurePage } from '@/tests/e2e/harness/measurePage';
import { openPage } from '@/tests/e2e/harness/openPage';

/* Before the docket answered first it was 8,060 and 16,400 px high, with 3,300 words and 221 stops of the Tab key. */
const MOST_WORDS = 1_100;
const MOST_STOPS = 130;

async function finished(width: number): Promise<Page> {
  const page = await openPage({ width });
  await filled(page);
  return page;
}

test.each([
  [1280, 3_400],
  [390, 6_500],
])('the finished example at %d px is at most %d px high, and fits in the head', async (width, mostPx) => {
  const page = await finished(width);
  const { heightPx, words, tabStops, small } = await measurePage(page);
  process.stdout.write(`docket at ${width} px: ${heightPx} px high, ${words} words, ${tabStops} tab stops\n`);
  expect.soft(heightPx).toBeLessThanOrEqual(mostPx);
  expect.soft(words).toBeLessThanOrEqual(MOST_WORDS);
  expect.soft(words).toBeGreaterThan(500);
  expect.soft(tabStops).toBeLessThanOrEqual(MOST_STOPS);
  expect.soft(small).toEqual([]);
});

test('“The job” and “Checks” take their share of the page and no more', async () => {
  for (const [width, mostPx] of [
    [1280, 700],
    [390, 1_400],
  ] as const) {
    const page = await finished(width);
    const heights = await Promise.all(
      ['The job', 'Checks'].map(async (name) => (await section(page, name).boundingBox())?.height ?? 0),
    );
    expect(Math.min(...heights)).toBeGreaterThan(100);
    expect(heights[0] ?? 0).toBeLessThan(mostPx);
    expect((heights[0] ?? 0) + (heights[1] ?? 0), `at ${width} px`).toBeLessThanOrEqual(mostPx);
  }
});

test('the rail marks the section that is read, and jumps without hiding the heading under the price', async () => {
  const page = await finished(1280);
  const index = page.getByRole('navigation', { name: 'Sections of this job' });
  await index.getByRole('link', { name: /Prices/ }).click();
  await expect.poll(() => index.locator('[aria-current]').textContent()).toMatch(/Prices/);
  const heading = section(page, 'Prices').getByRole('heading', { name: 'Prices' });
  await expect.poll(() => heading.evaluate((element) => element === document.activeElement)).toBe(true);
  await expect.poll(() => roomUnder(page.locator('[data-price-bar]'), heading)).toBeGreaterThanOrEqual(0);
});

test('on a phone the whole index opens as a sheet that keeps the focus, closes on Escape and gives it back', async () => {
  const page = await finished(390);
  const opener = page.getByRole('button', { name: 'All sections' }).first();
  await opener.click();
  const sheet = page.getByRole('dialog', { name: 'Sections of this job' });
  await sheet.waitFor();
  await axe(page);
  for (let at = 0; at < 12; at += 1) await page.keyboard.press('Tab');
  const isKept = () =>
    page.evaluate(() => {
      const { activeElement, body } = document;
      return activeElement === body || activeElement?.closest('dialog') !== null;
    });
  expect(await isKept()).toBe(true);
  await page.keyboard.press('Escape');
  await sheet.waitFor({ state: 'hidden' });
  await expect.poll(() => opener.evaluate((element) => element === document.activeElement)).toBe(true);
  await opener.click();
  await sheet.getByRole('link', { name: /Checks/ }).click();
  const heading = section(page, 'Checks').getByRole('heading', { name: 'Checks' });
  await expect.poll(() => heading.evaluate((element) => element === document.activeElement)).toBe(true);
  const chips = page.getByRole('navigation', { name: 'Sections of this job' });
  await expect.poll(() => roomUnder(chips, heading)).toBeGreaterThanOrEqual(0);
});

/** From the lower edge of what stays in sight down to a heading, px: less than nothing where it is covered. */
async function roomUnder(above: Locator, heading: Locator): Promise<number> {
  const [bar, box] = [await above.boundingBox(), await heading.boundingBox()];
  return (box?.y ?? 0) - (bar?.y ?? 0) - (bar?.height ?? 0);
}
