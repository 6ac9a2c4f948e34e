import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { kept } from '@/tests/e2e/harness/docketPage';
import { looksRight } from '@/tests/e2e/harness/looksRight';
import { openPage, type PageOptions } from '@/tests/e2e/harness/openPage';
import { savedPaper } from '@/tests/e2e/harness/savedPaper';

/** A new list of these lines as they are suggested, issued once. */
async function issuedList(lines: readonly string[], options: PageOptions): Promise<Page> {
  const page = await openPage({ ...options, path: '/price-lists' });
  await page.getByRole('button', { name: 'New price list' }).click();
  await page.getByText('None yet. Add lines of your jobs.').waitFor();
  for (const line of lines) {
    await page.getByLabel('A line of a job').selectOption({ label: line });
    await page.getByRole('button', { name: 'Add it' }).click();
  }
  await page.getByRole('article').waitFor();
  await page.locator('[aria-busy="true"]').waitFor({ state: 'detached' });
  await page.getByRole('button', { name: /^Issue version 1[A-Z]?$/ }).click();
  await page.getByRole('article', ISSUED).waitFor();
  await kept(page);
  await standing(page)
    .getByText(/Every price leaves/)
    .waitFor();
  return page;
}

/** The first version has the letter that the device drew. */
const ISSUED = { name: /^Price list, version 1[A-Z]$/ } as const;

const standing = (page: Page) => page.getByRole('region', { name: /^Does version 1[A-Z] still hold\?$/ });

/** The paper that is looked at, as it is saved. */
const saved = (page: Page) =>
  savedPaper(page, page.getByRole('button', { name: 'Save as PDF of the price list' }));

const SHIRTS = 'Spring Fair shirts';
const MUGS = 'Spring Fair mugs';

test('a list of seven items from two jobs is issued and saved as one page, prices and no costs', async () => {
  const page = await issuedList(
    [
      `Fern shirt · ${SHIRTS}`,
      `Lighthouse shirt · ${SHIRTS}`,
      `Otter shirt · ${SHIRTS}`,
      `Star Map shirt · ${SHIRTS}`,
      `Fern mug · ${MUGS}`,
      `Otter mug · ${MUGS}`,
      `Star Map mug · ${MUGS}`,
    ],
    { width: 1280 },
  );
  await looksRight(page, 'price-list-issued');
  const paper = page.getByRole('article', ISSUED);
  // What is made to stock has one price a size, each said in full, and no least order beside it.
  const shirt = paper.locator('section').filter({ hasText: 'Fern shirt' }).first();
  expect(await shirt.locator('dt').allTextContents()).toEqual(['S to XL', '2XL', '3XL']);
  expect(await paper.textContent()).not.toContain('Least order');
  const prices = (await paper.locator('dd strong').allTextContents()).map((text) => text.trim());
  expect(prices.length).toBeGreaterThanOrEqual(4 * 3 + 3);
  for (const [label, size] of [
    ['Letter', '612 × 792'],
    ['A4', '595 × 842'],
  ] as const) {
    await page.getByLabel('Printed on').selectOption({ label });
    // Its file follows the choice.
    await expect.poll(async () => (await saved(page)).pages.map((one) => one.size)).toEqual([size]);
    const { pages } = await saved(page);
    const text = pages.map((one) => one.text).join(' ');
    expect(text).toContain('page 1 of 1');
    for (const told of [...prices, 'Fern shirt', 'Star Map mug']) expect(text).toContain(told);
    expect(text).toMatch(/number 1[A-Z]\b/);
    expect(text).not.toMatch(/margin|for you alone|take off|undo|workshop/i);
  }
});

test('a dearer mug shows on a phone which prices no longer hold, after a reload too, until it is undone', async () => {
  const page = await issuedList([`Fern shirt · ${SHIRTS}`, `Fern mug · ${MUGS}`], { width: 390 });
  const main = page.getByRole('navigation', { name: 'Main' });
  await main.getByRole('button', { name: 'More' }).click();
  await main.getByRole('link', { name: 'Blanks' }).click();
  // The list that is left has buttons that name the mug, too.
  await page.getByRole('heading', { level: 1, name: 'Blanks' }).waitFor();
  await page.getByRole('button', { name: /mug/i }).first().click();
  await page
    .getByRole('textbox', { name: /^11 oz/ })
    .first()
    .fill('4');
  await kept(page);
  await main.getByRole('button', { name: 'More' }).click();
  await main.getByRole('link', { name: 'Price lists' }).click();
  await page.getByText(/prices? no longer hold/).waitFor();
  await looksRight(page, 'price-lists');
  await page
    .getByRole('link', { name: /^Price list/ })
    .last()
    .click();
  const worn = standing(page).getByText(/^Fern mug: .* no longer/);
  await worn.waitFor();
  await page.reload();
  await worn.waitFor();
  expect(await standing(page).textContent()).not.toContain('Fern shirt');
  await looksRight(page, 'price-list-worn');
  await page.getByRole('button', { name: /^Undo/ }).click();
  await standing(page)
    .getByText(/Every price leaves/)
    .waitFor();
});

test.each([1280, 390])('the example list is issued and saved as it is suggested, %d wide', async (width) => {
  const page = await openPage({ path: '/price-lists/club-prices', width });
  await page.getByText('Nothing stands in the way.').waitFor();
  await page.getByRole('article', { name: 'Draft of the price list' }).waitFor();
  await looksRight(page, `price-list-draft-${width}`);
  await page.getByRole('button', { name: /^Issue version 1[A-Z]?$/ }).click();
  await page.getByRole('article', ISSUED).waitFor();
  await kept(page);
  const { pages } = await saved(page);
  expect(pages.map(({ size }) => size)).toEqual(['612 × 792']);
  expect(pages[0]?.text).toContain('Club shirt');
  expect(pages[0]?.text).toContain('page 1 of 1');
  // The trade's example of a capped list of six breaks: one alone, two or three together, then a price a piece.
  const text = pages[0]?.text.replaceAll(/\s+/g, ' ');
  expect(text).toMatch(/ 1 144\.50 2 to 3 18\d\.\d0 together 4 to 5 4\d\.\d0 each/);
  expect(pages[0]?.text).not.toMatch(/margin|stands in the way|issue version|undo/i);
});

test('a list of two pages says on each which it is', async () => {
  const page = await openPage({ path: '/price-lists/club-prices' });
  await page.getByRole('article').waitFor();
  await page.getByRole('textbox', { name: 'What is included' }).fill('More.\n'.repeat(60));
  await page.getByText(/It takes 2 pages/).waitFor();
  const { pages } = await saved(page);
  expect(pages.map(({ text }) => /page \d of \d/.exec(text)?.[0])).toEqual(['page 1 of 2', 'page 2 of 2']);
  expect(pages.every(({ isInside }) => isInside)).toBe(true);
  for (const { text } of pages) {
    expect(text).toContain('Shirts and mugs for clubs');
    expect(text).toContain('Draft, not issued yet');
  }
});

test('all that stands in the way is told at once, on a phone too', async () => {
  const page = await openPage({ path: '/price-lists', width: 390 });
  await page.getByRole('button', { name: 'New price list' }).click();
  await page.getByRole('heading', { name: '1 thing stands in the way' }).waitFor();
  for (const line of [`Fern mug · ${MUGS}`, 'Club shirt · Ramblers Club shirts']) {
    await page.getByLabel('A line of a job').selectOption({ label: line });
    await page.getByRole('button', { name: 'Add it' }).click();
  }
  await page.getByText(/stand to tax in different ways/).waitFor();
  await looksRight(page, 'price-list-obstacles');
  await page.getByRole('link', { name: 'How Fern mug is sold' }).click();
  await page.waitForURL(/fair-mugs#job-channelId/);
});

test('a version that undo took out of force stays kept, and the next has another number', async () => {
  const page = await openPage({ path: '/price-lists/club-prices', width: 390 });
  await page.getByText('Nothing stands in the way.').waitFor();
  await page.getByRole('button', { name: /^Issue version 1[A-Z]?$/ }).click();
  await page.getByRole('article', ISSUED).waitFor();
  await page.getByRole('button', { name: /^Undo/ }).click();
  await page.getByText('Nothing of it is in force.').waitFor();
  await page.getByRole('button', { name: /^Issue version 2[A-Z]$/ }).click();
  await page.getByRole('article', { name: /^Price list, version 2[A-Z]$/ }).waitFor();
  await page.reload();
  await page.getByRole('article', { name: /^Price list, version 2[A-Z]$/ }).waitFor();
  await page.getByText('Withdrawn', { exact: true }).click();
  await page.getByRole('button', { name: /^Show version 1/ }).click();
  await page.getByRole('article', ISSUED).getByText('Withdrawn: it is not in force any more.').waitFor();
  await looksRight(page, 'price-list-withdrawn');
});

test('what went out of a list can be saved after the list was removed', async () => {
  const page = await issuedList([`Fern mug · ${MUGS}`], { width: 1280 });
  await page.getByRole('link', { name: 'Price lists' }).click();
  await page
    .getByRole('button', { name: /^Remove Price list/ })
    .first()
    .click();
  await page.getByText('Papers of removed lists').click();
  await looksRight(page, 'price-lists-removed');
  await page
    .getByRole('link', { name: /^Price list/ })
    .last()
    .click();
  await page.getByRole('article', ISSUED).waitFor();
  const { pages } = await saved(page);
  expect(pages.map(({ text }) => text).join(' ')).toContain('Fern mug');
});
