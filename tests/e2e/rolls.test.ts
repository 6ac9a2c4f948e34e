import { readFile } from 'node:fs/promises';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { axe } from '@/tests/e2e/harness/axe';
import { kept, priced, section, type, unfold } from '@/tests/e2e/harness/docketPage';
import { looksRight, scrollsNowhere } from '@/tests/e2e/harness/looksRight';
import { openPage, type PageOptions } from '@/tests/e2e/harness/openPage';
import { post } from '@/tests/e2e/harness/post';
import { shot } from '@/tests/e2e/harness/shot';

/** Adds a roll 24 in wide, prints up to 40 in, 30 m of it, at the typical price. */
async function withRoll(options: PageOptions): Promise<Page> {
  const page = await openPage({ ...options, path: '/workshop#sheets' });
  const add = page.getByLabel('A further sheet');
  await add.waitFor();
  await add.selectOption({ label: 'A roll' });
  await add.locator('xpath=ancestor::*[.//button][1]').getByRole('button', { name: 'Add it' }).click();
  await kept(page);
  const holds = page.getByLabel('A new roll holds');
  await type(holds, '30');
  await holds.press('Tab');
  await kept(page);
  return page;
}

/** Makes the roll the paper of the example. */
async function useRoll(page: Page): Promise<void> {
  await page.goto('/');
  await priced(page);
  const sheets = section(page, 'Sheets');
  await unfold(sheets, 'Other papers');
  await unfold(sheets, /^Sheets to print/);
  const row = sheets.getByRole('row', { name: /Roll of transfer paper/ });
  await row.waitFor();
  await expect.poll(() => row.textContent()).toContain('4.65 m');
  await row.getByRole('button', { name: /^Use Roll/ }).click();
  await sheets.getByText(/^4\.65 m of roll for the good pieces/).waitFor();
}

test('a roll is compared and used, and its file has pages as wide as it and as long as their prints', async () => {
  const page = await withRoll({ width: 1280 });
  await shot(page, 'rolls-workshop');
  await useRoll(page);
  const sheets = section(page, 'Sheets');
  await sheets.getByText(/of roll, about a fifth of a 30 m roll/).waitFor();
  await sheets.getByText(/cut into 4 strips/).waitFor();
  await looksRight(page, 'rolls-docket');
  const each = sheets.getByRole('button', { name: /^One of each, 3 pages/ });
  const [download] = await Promise.all([page.waitForEvent('download'), each.click()]);
  const data = new Uint8Array(await readFile(await download.path()));
  const pdf = await getDocument({ data, verbosity: 0 }).promise;
  // Four strips of 209.55 mm, three of them, seven of 95.25 mm; borders and gutters cancel out.
  for (const [index, long] of [838.2, 628.65, 666.75].entries()) {
    const [left = 0, bottom = 0, right = 0, top = 0] = (await pdf.getPage(index + 1)).view;
    const [wide, high] = [right - left, top - bottom].map((points) => (points / 72) * 25.4);
    expect(Math.abs((wide ?? 0) - 609.6)).toBeLessThan(0.1);
    expect(Math.abs((high ?? 0) - long)).toBeLessThan(0.1);
  }
});

test('a width of nothing is said and not taken; on a phone in the dark nothing lies beside the page', async () => {
  const page = await withRoll({ width: 390, scheme: 'dark' });
  const width = page.getByLabel('Width', { exact: true }).last();
  await type(width, '0');
  await width.press('Tab');
  await expect.poll(() => width.getAttribute('aria-invalid')).toBe('true');
  await axe(page);
  // The roll is as wide as before: its length is what it was.
  await useRoll(page);
  await shot(page, 'rolls-docket-dark');
  await scrollsNowhere(page);
});

test('the API takes a roll, and tells of a price that is for the other form', async () => {
  const example = JSON.parse(await readFile('public/examples/club-order.json', 'utf8'));
  const [sheet] = example.workshop.sheets;
  const ask = async (fields: Readonly<Record<string, unknown>>) => {
    const workshop = { ...example.workshop, sheets: [{ ...sheet, ...fields }] };
    const response = await post(JSON.stringify({ ...example, workshop }));
    return response.json();
  };
  const roll = { form: 'roll', widthMm: 609.6, heightMm: 1016 };
  const answer = await ask({ ...roll, price: { ...sheet.price, value: 1.2, unit: 'money/m' } });
  expect(answer.costSheet.fullCost).toBeGreaterThan(400);
  const told = await ask(roll);
  expect(told.findings[0]).toMatchObject({ id: 'RATE-03', severity: 'stop' });
});
