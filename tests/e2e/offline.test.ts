import { readFile } from 'node:fs/promises';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { pageAt, shells } from '@/app/_offline/shells';
import { expectPriceBar, filled, kept, priced, section, unfold } from '@/tests/e2e/harness/docketPage';
import { appKept, cutNetwork } from '@/tests/e2e/harness/keptApp';
import { looksRight } from '@/tests/e2e/harness/looksRight';
import { openPage } from '@/tests/e2e/harness/openPage';
import { type OwnServer, ownServer } from '@/tests/e2e/harness/ownServer';
import { allowTrouble } from '@/tests/e2e/harness/problems';
import { savedPaper } from '@/tests/e2e/harness/savedPaper';

let server: OwnServer;

beforeEach(async () => {
  server = await ownServer(process.cwd());
  await server.start();
});

afterEach(() => server.end());

/** A page of somebody who was here once, on a first visit that ended in peace; now there is no network and no server. */
async function offlinePage(): Promise<Page> {
  const page = await openPage({ keptFrom: server.baseUrl });
  await filled(page);
  await appKept(page);
  await cutNetwork(page);
  await server.end();
  return page;
}

const priceField = (page: Page) =>
  section(page, 'The job').getByRole('textbox', { name: 'Price of a shirt', exact: true });

test('after one visit every screen opens without a network, and again when it is reloaded', async () => {
  const page = await offlinePage();
  const screens = [
    ['/', 'Ramblers Club shirts'],
    ['/jobs', 'Jobs'],
    ['/jobs/fair-mugs', 'Spring Fair mugs'],
    ['/jobs/club-order/sheet', 'Job sheet'],
    ['/orders', 'Orders'],
    ['/orders/club-enquiry', 'Ramblers Club shirts'],
    ['/orders/none-of-ours', 'This order is not here'],
    ['/customers', 'Customers'],
    ['/customers/ramblers-club', 'Exampleton Ramblers Club'],
    ['/stall/shops', 'Shops'],
    ['/stall/shops/none-of-ours', 'This shop is not here'],
    ['/stall', 'Stall days'],
    ['/stall/spring-fair', 'Exampleton Spring Fair'],
    ['/stall/none-of-ours', 'This stall day is not here'],
    ['/making', 'Runs'],
    ['/making/none-of-ours', 'This run is not here'],
    ['/making/none-of-ours/press', 'This run is not here'],
    ['/making/none-of-ours/after', 'This run is not here'],
    ['/making/stock', 'Stock'],
    ['/making/log', 'Press log'],
    ['/making/suppliers', 'Suppliers'],
    ['/making/buying', 'Buying'],
    ['/making/buying/none-of-ours', 'This buying list is not here'],
    ['/blanks', 'Blanks'],
    ['/price-lists', 'Price lists'],
    ['/price-lists/none-of-ours', 'This price list is not here'],
    ['/jobs/a%20b%C3%A4', 'This job is not here'],
    ['/year', 'Year'],
    ['/workshop', 'Exampleton Prints'],
    ['/start', /./],
  ] as const;
  for (const [path, name] of screens) {
    await page.goto(path);
    await page.getByRole('heading', { level: 1, name }).first().waitFor();
    await page.reload();
    await page.getByRole('heading', { level: 1, name }).first().waitFor();
    await page.getByText('no network').waitFor();
  }
  await page.goto('/jobs/');
  await page.getByRole('heading', { level: 1, name: 'Jobs' }).waitFor();
  await looksRight(page, 'jobs-offline');
  await page.goto('/nowhere');
  await page.getByRole('heading', { level: 1, name: 'This page is not on this device' }).waitFor();
});

test('without a network every sum is made: price, studies, curve, the file of sheets, and paper', async () => {
  const page = await offlinePage();
  await page.goto('/jobs/club-order');
  await priced(page);
  await priceField(page).fill('21');
  await priceField(page).blur();
  await expectPriceBar(page, /21\.00/);
  await kept(page);
  await page.reload();
  await filled(page);
  await expect.poll(() => priceField(page).inputValue()).toBe('21.00');
  await page.getByRole('list', { name: 'Levers, biggest first' }).waitFor();
  const sheets = section(page, 'Sheets');
  await unfold(sheets, /^Sheets to print/);
  const every = sheets.getByRole('button', { name: 'Every sheet, 47 pages' });
  const [download] = await Promise.all([page.waitForEvent('download'), every.click()]);
  const data = new Uint8Array(await readFile(await download.path()));
  expect((await getDocument({ data, verbosity: 0 }).promise).numPages).toBe(47);
  await page.goto('/jobs/club-order/sheet');
  for (const name of ['Save as PDF of the job sheet', 'Save as PDF of the costs'])
    expect((await savedPaper(page, page.getByRole('button', { name }))).pages).toHaveLength(1);
});

test('a job made without a network opens again by its address, in another tab too', async () => {
  const page = await offlinePage();
  await page.goto('/jobs');
  await page.getByRole('button', { name: 'New job' }).click();
  await page.waitForURL(/\/jobs\/[\w-]{8,}/);
  await page.getByRole('heading', { level: 1, name: 'New job' }).waitFor();
  await kept(page);
  const address = page.url();
  await page.reload();
  await page.getByRole('heading', { level: 1, name: 'New job' }).waitFor();
  const beside = await openPage({ beside: page, path: address });
  await beside.getByRole('heading', { level: 1, name: 'New job' }).waitFor();
});

test('links, back and forward lead where they do with a network', async () => {
  const page = await offlinePage();
  await page.getByRole('link', { name: 'Jobs', exact: true }).click();
  await page
    .getByRole('link', { name: /Spring Fair mugs/ })
    .first()
    .click();
  await page.getByRole('heading', { level: 1, name: 'Spring Fair mugs' }).waitFor();
  await page.goBack();
  await page.getByRole('heading', { level: 1, name: 'Jobs' }).waitFor();
  await page.goForward();
  await page.getByRole('heading', { level: 1, name: 'Spring Fair mugs' }).waitFor();
  expect(new URL(page.url()).pathname).toBe('/jobs/fair-mugs');
});

test('where the device has no room for the app, nothing is said and all works on from the network', async () => {
  const page = await openPage({ path: '/blanks', keptFrom: server.baseUrl });
  // The browser's own remarks on what it could not keep.
  allowTrouble(/Quota|bad-precaching-response|Failed to load|Failed to execute 'put'/i);
  const devTools = await page.context().newCDPSession(page);
  await devTools.send('Storage.overrideQuotaForOrigin', { origin: server.baseUrl, quotaSize: 3_000_000 });
  let asked = 0;
  page.context().on('request', (request) => {
    if (new URL(request.url()).pathname === '/sw.js') asked += 1;
  });
  await page.goto('/');
  await filled(page);
  await expect
    .poll(() => page.evaluate(() => performance.getEntriesByName('pressminute-keeps').length))
    .toBe(1);
  // Given up: neither on its way nor kept in part.
  await expect
    .poll(() => page.evaluate(async () => (await navigator.serviceWorker.getRegistrations()).length))
    .toBe(0);
  await expect.poll(() => page.evaluate(() => caches.keys())).toEqual([]);
  // Not the framework's own, empty one, which reads pages out.
  expect(await page.getByRole('alert').filter({ hasText: /./ }).count()).toBe(0);
  expect(await page.getByText('newer version').count()).toBe(0);
  expect(asked).toBeLessThanOrEqual(1);
  await priceField(page).fill('21');
  await priceField(page).blur();
  await expectPriceBar(page, /21\.00/);
  await kept(page);
  await page.reload();
  await priced(page);
  await expect.poll(() => priceField(page).inputValue()).toBe('21.00');
});

test('what is kept is pages and files of the app, nothing that the API answered', async () => {
  const page = await openPage({ keptFrom: server.baseUrl });
  await filled(page);
  await appKept(page);
  const { answered, names, paths } = await page.evaluate(async () => {
    const response = await fetch('/api/health');
    const names = await caches.keys();
    const kept = await Promise.all(names.map(async (name) => (await caches.open(name)).keys()));
    return {
      answered: response.status,
      names: names.length,
      paths: kept.flat().map(({ url }) => new URL(url).pathname),
    };
  });
  expect(answered).toBe(200);
  expect(names).toBe(1);
  expect(paths.filter((path) => path.startsWith('/api/') || path === '/sw.js')).toEqual([]);
  expect(paths.filter((path) => pageAt(path) === path)).toHaveLength(shells.length);
});

test('what needs the server says so', async () => {
  const page = await offlinePage();
  const [status, said] = await page.evaluate(async () => {
    const response = await fetch('/api/price', { method: 'POST', body: '{}' });
    return [response.status, await response.text()] as const;
  });
  expect(status).toBe(503);
  expect(said).toContain('The server cannot be reached');
});
