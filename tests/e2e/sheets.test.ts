import { readFile } from 'node:fs/promises';
import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { Page } from 'playwright-core';
import sharp from 'sharp';
import { expect, test } from 'vitest';
import { kept, priced, section, type, unfold } from '@/tests/e2e/harness/docketPage';
import { looksRight } from '@/tests/e2e/harness/looksRight';
import { openPage, type PageOptions } from '@/tests/e2e/harness/openPage';
import { shot } from '@/tests/e2e/harness/shot';
import { readSheets } from '@/tests/fixtures/readSheets';

/** A workshop that has a second, larger sheet; then the docket of the example. */
async function withTabloid(options: PageOptions = {}): Promise<Page> {
  const page = await openPage({ ...options, path: '/workshop#sheets' });
  const add = page.getByLabel('A further sheet');
  await add.waitFor();
  await add.selectOption({ label: 'Tabloid 11 × 17, 11 × 17 in' });
  await add.locator('xpath=ancestor::*[.//button][1]').getByRole('button', { name: 'Add it' }).click();
  await kept(page);
  await page.goto('/');
  await priced(page);
  const sheets = section(page, 'Sheets');
  await unfold(sheets, 'Other papers');
  await unfold(sheets, /^Sheets to print/);
  return page;
}

test.each([1280, 390])('sheets are compared and changed by one tap at %d px', async (width) => {
  const page = await withTabloid({ width });
  const sheets = section(page, 'Sheets');
  await sheets.getByText('47 sheets for the good pieces; no layout needs fewer.').waitFor();
  await looksRight(page, 'sheets');
  const row = sheets.getByRole('row', { name: /Tabloid/ });
  await expect.poll(() => row.textContent()).toMatch(/24[\s\S]*10\.78 USD/);
  await row.getByRole('button', { name: /^Use Tabloid/ }).click();
  await sheets.getByText(/^24 sheets for the good pieces/).waitFor();
  await expect.poll(() => row.textContent()).toContain('this job’s sheet');
  await page.getByRole('button', { name: /^Undo/ }).click();
  await sheets.getByText(/^47 sheets for the good pieces/).waitFor();
});

test('a badge a little smaller saves three sheets and 1.73, by one tap', async () => {
  const page = await openPage();
  await priced(page);
  const sheets = section(page, 'Sheets');
  await sheets.getByText('6 to a sheet, 3 sheets fewer, 1.73 USD saved.', { exact: false }).waitFor();
  await unfold(sheets, 'Quantities that fill a sheet');
  await sheets.getByText('40 pieces just fill a sheet: 3 more add 25.66 USD', { exact: false }).waitFor();
  await sheets.getByRole('button', { name: 'Print Chest badge at 3.41 × 3.41 in' }).click();
  await sheets.getByText('Chest badge, 6 on each').waitFor();
  await unfold(sheets, /^Sheets to print/);
  await sheets.getByText(/^44 sheets for the good pieces/).waitFor();
});

test.each([1280, 390])('a line is printed in the waste where it is asked for, at %d px', async (width) => {
  const page = await openPage({ width });
  await priced(page);
  const sheets = section(page, 'Sheets');
  await unfold(sheets, /^Sheets to print/);
  await sheets.getByRole('checkbox', { name: 'Print a line of words in the waste' }).check();
  await sheets.getByText(/have room for it at an edge; the other \d+ gets? none\. Cut it off/).waitFor();
  await looksRight(page, 'line-in-the-waste');
  const one = sheets.getByRole('button', { name: 'One of each, 3 pages' });
  const [download] = await Promise.all([page.waitForEvent('download'), one.click()]);
  const bytes = new Uint8Array(await readFile(await download.path()));
  const { pages, pictures, text } = await readSheets(bytes, 2);
  expect(pages).toBe(3);
  expect(text).toEqual([]);
  // The example keeps no picture files: name of the job, which sheet, what to do.
  expect(pictures).toHaveLength(3);
  for (const { data } of pictures) {
    const { bytes: pixels } = await data();
    // Black letters on white.
    expect(pixels.some((value) => value < 50)).toBe(true);
    expect(pixels[0]).toBe(255);
  }
});

test('the file has a page of true size for every sheet, and none is written while a stop stands', async () => {
  const page = await openPage();
  await priced(page);
  const sheets = section(page, 'Sheets');
  await unfold(sheets, /^Sheets to print/);
  const every = sheets.getByRole('button', { name: 'Every sheet, 47 pages' });
  await every.waitFor();
  const [download] = await Promise.all([page.waitForEvent('download'), every.click()]);
  expect(download.suggestedFilename()).toBe('Ramblers Club shirts, all 47 sheets.pdf');
  await sheets.getByText('“Ramblers Club shirts, all 47 sheets.pdf” is written', { exact: false }).waitFor();
  const pdf = await getDocument({ data: new Uint8Array(await readFile(await download.path())), verbosity: 0 })
    .promise;
  expect(pdf.numPages).toBe(47);
  // 8.5 × 11 in of 72 points.
  const [left = 0, bottom = 0, right = 0, top = 0] = (await pdf.getPage(1)).view;
  expect(right - left).toBeCloseTo(612, 3);
  expect(top - bottom).toBeCloseTo(792, 3);
  expect(await pdf.getViewerPreferences()).toMatchObject({ PrintScaling: 'None' });
  await type(section(page, 'The job').getByRole('textbox', { name: 'Price of a shirt', exact: true }), '1');
  await sheets.getByText('Not while a stop stands.').waitFor();
  await expect.poll(() => every.getAttribute('aria-disabled')).toBe('true');
});

test('a picture the maker brought in lies on the sheets with every pixel of its file, mirrored and in true size', async () => {
  const page = await openPage();
  await priced(page);
  const job = section(page, 'The job');
  await job.getByRole('button', { name: /^Back picture/ }).click();
  const png = await sharp({ create: { width: 1600, height: 2000, channels: 3, background: '#2a7' } })
    .png()
    .toBuffer();
  await job
    .getByLabel('Picture file of Hill path picture')
    .setInputFiles({ name: 'hill.png', mimeType: 'image/png', buffer: png });
  const sheets = section(page, 'Sheets');
  await unfold(sheets, /^Sheets to print/);
  await sheets
    .getByText('No picture file is kept for Chest badge: its place stays empty', { exact: false })
    .waitFor();
  const drawing = sheets.getByRole('img', { name: 'Letter sheet with 1 of Back picture, mirrored' });
  const drawn = drawing.locator('image');
  await drawn.waitFor();
  await expect.poll(() => drawn.getAttribute('transform')).toContain('scale(-1 1)');
  await shot(page, 'sheets-picture');
  const each = sheets.getByRole('button', { name: /^One of each, 3 pages/ });
  const [download] = await Promise.all([page.waitForEvent('download'), each.click()]);
  const data = new Uint8Array(await readFile(await download.path()));
  const pdf = await getDocument({ data, verbosity: 0 }).promise;
  const { fnArray, argsArray } = await (await pdf.getPage(1)).getOperatorList();
  const image = fnArray.indexOf(OPS.paintImageXObject);
  expect(argsArray[image]?.slice(1, 3)).toEqual([1600, 2000]);
  // 8 × 10 in of 72 points, from right to left.
  const matrix: readonly number[] = [...(argsArray[fnArray.indexOf(OPS.transform)] ?? [])];
  expect(matrix[0]).toBeCloseTo(-576, 2);
  expect(matrix[3]).toBeCloseTo(720, 2);
});

test('the cover page is a file of its own, and letters that no type has are named and drawn', async () => {
  const page = await openPage();
  await priced(page);
  const sheets = section(page, 'Sheets');
  await unfold(sheets, /^Sheets to print/);
  const cover = sheets.getByRole('button', { name: 'Cover page (plain paper)' });
  await cover.waitFor();
  const job = section(page, 'The job');
  await job.getByRole('button', { name: /^Back picture/ }).click();
  await type(job.getByRole('textbox', { name: 'Name', exact: true }).first(), 'שביל, 道 Nguyễn');
  await sheets.getByText(/These letters are drawn as a picture of this device’s type: .?道/).waitFor();
  const [download] = await Promise.all([page.waitForEvent('download'), cover.click()]);
  expect(download.suggestedFilename()).toBe('Ramblers Club shirts – cover, plain paper.pdf');
  const data = new Uint8Array(await readFile(await download.path()));
  const pdf = await getDocument({ data, verbosity: 0 }).promise;
  const first = await pdf.getPage(1);
  const { items } = await first.getTextContent();
  const text = items.map((item) => ('str' in item ? item.str : '')).join('');
  expect(text).toContain('Cover page – plain paper, do not press');
  expect(text).toContain('Sheets 1–37 of 47');
  expect(text).toMatch(/Nguyễn/);
  const { fnArray } = await first.getOperatorList();
  expect(fnArray).toContain(OPS.paintImageXObject);
});
