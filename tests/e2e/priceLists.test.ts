import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { kept, section } from '@/tests/e2e/harness/docketPage';
import { looksRight } from '@/tests/e2e/harness/looksRight';
import { openPage, type PageOptions } from '@/tests/e2e/harness/openPage';

/** A new list of these lines, sold under a cap because their totals would fall, and issued once. */
async function issuedList(lines: readonly string[], options: PageOptions): Promise<Page> {
  const page = await openPage({ ...options, path: '/price-lists' });
  await page.getByRole('button', { name: 'New price list' }).click();
  await page.getByText('None yet. Add lines of your jobs.').waitFor();
  for (const line of lines) {
    await page.getByLabel('A line of a job').selectOption({ label: line });
    await page.getByRole('button', { name: 'Add it' }).click();
  }
  await page.getByRole('button', { name: `Sell all ${lines.length} under a cap` }).click();
  await page.getByRole('article').waitFor();
  await page.locator('[aria-busy="true"]').waitFor({ state: 'detached' });
  await page.getByRole('button', { name: 'Issue version 1' }).click();
  await page.getByRole('article', { name: 'Price list, version 1' }).waitFor();
  await kept(page);
  await standing(page)
    .getByText(/Every price leaves/)
    .waitFor();
  return page;
}

/** What the browser prints, page by page. */
async function printed(page: Page): Promise<{ readonly sizes: readonly string[]; readonly text: string }> {
  const data = new Uint8Array(await page.pdf({ preferCSSPageSize: true }));
  const pdf = await getDocument({ data, verbosity: 0 }).promise;
  const pages = await Promise.all(Array.from({ length: pdf.numPages }, (_, index) => pdf.getPage(index + 1)));
  const texts = await Promise.all(pages.map((one) => one.getTextContent()));
  return {
    // In whole points: A4 is 595 × 842, letter 612 × 792.
    sizes: pages.map(({ view }) => `${Math.round(view[2] ?? 0)} × ${Math.round(view[3] ?? 0)}`),
    text: texts.flatMap(({ items }) => items.map((item) => ('str' in item ? item.str : ''))).join(' '),
  };
}

const standing = (page: Page) => section(page, 'Does version 1 still hold?');

const SHIRTS = 'Spring Fair shirts';
const MUGS = 'Spring Fair mugs';

test('a list of seven items from two jobs is issued and printed on one page, prices and no costs', async () => {
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
  const paper = page.getByRole('article', { name: 'Price list, version 1' });
  const prices = await paper.locator('dd').allTextContents();
  expect(prices.length).toBeGreaterThan(14);
  for (const [label, size] of [
    ['Letter', '612 × 792'],
    ['A4', '595 × 842'],
  ] as const) {
    await page.getByLabel('Printed on').selectOption({ label });
    const { sizes, text } = await printed(page);
    expect(sizes).toEqual([size]);
    for (const told of [...prices, 'Fern shirt', 'Star Map mug', 'Version 1']) expect(text).toContain(told);
    expect(text).not.toMatch(/margin|for you alone|take off|undo|workshop/i);
  }
});

test('a dearer mug shows on a phone which prices no longer hold, after a reload too, until it is undone', async () => {
  const page = await issuedList([`Fern shirt · ${SHIRTS}`, `Fern mug · ${MUGS}`], { width: 390 });
  await page.getByRole('link', { name: 'Blanks' }).click();
  // The list that is left has buttons that name the mug, too.
  await page.getByRole('heading', { level: 1, name: 'Blanks' }).waitFor();
  await page.getByRole('button', { name: /mug/i }).first().click();
  await page
    .getByRole('textbox', { name: /^11 oz/ })
    .first()
    .fill('4');
  await kept(page);
  await page.getByRole('link', { name: 'Price lists' }).click();
  await page.getByText(/prices no longer hold/).waitFor();
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
