import type { Page } from 'playwright-core';
import sharp from 'sharp';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { expectPriceBar, filled, kept, priced, section, unfold } from '@/tests/e2e/harness/docketPage';
import { appKept, cutNetwork } from '@/tests/e2e/harness/keptApp';
import { openPage } from '@/tests/e2e/harness/openPage';
import { type OwnServer, ownServer } from '@/tests/e2e/harness/ownServer';
import { savedPaper } from '@/tests/e2e/harness/savedPaper';

/* What a maker does at a fair where there is no network, after one visit at home. */

let server: OwnServer;

beforeEach(async () => {
  server = await ownServer(process.cwd());
  await server.start();
});

afterEach(() => server.end());

/** A device of its own that was here once. */
async function device(): Promise<Page> {
  const page = await openPage({ keptFrom: server.baseUrl });
  await filled(page);
  await appKept(page);
  return page;
}

/** From here on there is no network, and no server either. */
async function atTheFair(...pages: readonly Page[]): Promise<void> {
  for (const page of pages) await cutNetwork(page);
  await server.end();
}

/** Presses a button that hands out a file. */
async function fileBy(page: Page, button: string): Promise<string> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: button, exact: true }).first().click(),
  ]);
  return download.path();
}

test('a price list issued without a network is there and prints after a reload', async () => {
  const page = await device();
  await atTheFair(page);
  await page.goto('/price-lists/club-prices');
  await page.getByText('Nothing stands in the way.').waitFor();
  await page.getByRole('button', { name: /^Issue version 1[A-Z]$/ }).click();
  const issued = page.getByRole('article', { name: /^Price list, version 1[A-Z]$/ });
  await issued.waitFor();
  await kept(page);
  const told = await issued.textContent();
  await page.reload();
  await issued.waitFor();
  await expect.poll(() => issued.textContent()).toBe(told);
  const { text } = await savedPaper(
    page,
    page.getByRole('button', { name: 'Save as PDF of the price list' }),
  );
  expect(text).toContain('Club shirt');
});

test('a picture taken in without a network is read, priced, and there after a reload', async () => {
  const page = await device();
  await atTheFair(page);
  await page.goto('/jobs/club-order');
  await priced(page);
  const picture = async () => {
    await unfold(section(page, 'The job'), /^Back picture/);
    return section(page, 'The job').getByRole('group', { name: 'The picture, Hill path picture' });
  };
  const buffer = await sharp({ create: { width: 1600, height: 2000, channels: 3, background: '#00ffff' } })
    .png()
    .toBuffer();
  await (await picture())
    .getByLabel('Picture file of Hill path picture')
    .setInputFiles({ name: 'hill.png', mimeType: 'image/png', buffer });
  await (await picture()).getByText('100 % of ink').waitFor();
  await kept(page);
  await page.reload();
  await priced(page);
  await (await picture()).getByText(/hill\.png, PNG/).waitFor();
  await (await picture()).locator('canvas[data-drawn="true"]').waitFor();
});

test('without a network a copy is made, and a job is carried to another device that has none either', async () => {
  const [mine, other] = [await device(), await device()];
  await atTheFair(mine, other);
  const field = section(mine, 'The job').getByRole('textbox', { name: 'Price of a shirt', exact: true });
  await field.fill('21');
  await field.blur();
  await expectPriceBar(mine, /21\.00/);
  await kept(mine);
  const carried = await fileBy(mine, 'Carry to another device');
  await mine.goto('/workshop');
  await mine.getByRole('heading', { name: 'Make a copy' }).waitFor();
  const copy = await fileBy(mine, 'Make a copy');
  const bringIn = async (file: string) => {
    await other.goto('/workshop');
    await other.getByLabel('Copy or carried file').setInputFiles(file);
  };
  await bringIn(carried);
  await other.getByText('What was carried, looked at before it is taken').waitFor();
  await other
    .getByRole('button', { name: /^(?:Take|Bring)/ })
    .first()
    .click();
  // The one that stands beside what came of it: the header's is there before anything was taken.
  await other.getByRole('status').getByRole('button', { name: 'Undo', exact: true }).waitFor();
  await kept(other);
  await other.goto('/jobs/club-order');
  await expectPriceBar(other, /21\.00/);
  // A second time, and as part of a whole copy: nothing is new in it.
  for (const file of [carried, copy]) {
    await bringIn(file);
    await other.getByRole('button', { name: 'Leave everything as it is' }).click();
  }
  await other.goto('/jobs/club-order');
  await expectPriceBar(other, /21\.00/);
});

test('a first job of one’s own is priced and opened without a network', async () => {
  const page = await device();
  await atTheFair(page);
  await page.goto('/start');
  await page.locator('label', { hasText: 'Mugs' }).first().click();
  await page.getByRole('region', { name: 'Price', exact: true }).getByText('would pay you').waitFor();
  await page.getByRole('button', { name: 'Open the job' }).click();
  await page.waitForURL(/\/jobs\/[\w-]{8,}/);
  await priced(page);
  await kept(page);
  const name = await page.getByRole('heading', { level: 1 }).textContent();
  await page.reload();
  await priced(page);
  await expect.poll(() => page.getByRole('heading', { level: 1 }).textContent()).toBe(name);
});
