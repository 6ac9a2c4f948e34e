import { cp, readdir } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { changedBuild } from '@/tests/e2e/harness/changedBuild';
import { filled, kept, priced, section, type, unfold } from '@/tests/e2e/harness/docketPage';
import { appKept, cutNetwork, keptCounts, newerTold } from '@/tests/e2e/harness/keptApp';
import { looksRight } from '@/tests/e2e/harness/looksRight';
import { openPage } from '@/tests/e2e/harness/openPage';
import { type OwnServer, ownServer } from '@/tests/e2e/harness/ownServer';
import { allowTrouble } from '@/tests/e2e/harness/problems';
import { served } from '@/tests/e2e/harness/served';

let server: OwnServer;

beforeEach(async () => {
  server = await ownServer(process.cwd());
  await server.start();
});

afterEach(() => server.end());

/** What a browser says of files that a newer version no longer has, and while a server is being changed. */
const GONE =
  /status of 404|ERR_CONNECTION_REFUSED|ERR_ABORTED|ERR_INCOMPLETE_CHUNKED_ENCODING|ERR_CONNECTION_RESET|ERR_EMPTY_RESPONSE|Failed to fetch|bad-precaching-response|error occurred when fetching the script/;

const priceField = (page: Page) =>
  section(page, 'The job').getByRole('textbox', { name: 'Price of a shirt', exact: true });

/** Whether the page was sent by a build. */
const isOf = async (page: Page, build: string) => (await page.content()).includes(build);

/** Waits until a page hears of newer versions. */
const listens = (page: Page) =>
  expect.poll(() => page.evaluate(() => performance.getEntriesByName('pressminute-keeps').length)).toBe(1);

/** Counts how often any page of a context is loaded. */
function countLoads(page: Page): () => number {
  let loads = 0;
  page.on('domcontentloaded', () => {
    loads += 1;
  });
  return () => loads;
}

/** Puts the service worker of one build among the pages of another. */
async function mixLists(from: string, to: string): Promise<void> {
  const files = await readdir(join(from, '.next', 'server'), { recursive: true });
  for (const file of files.filter((name) => name.endsWith('sw.js.body')))
    await cp(join(from, '.next', 'server', file), join(to, '.next', 'server', file));
}

async function visit(): Promise<Page> {
  const page = await openPage({ keptFrom: server.baseUrl });
  await filled(page);
  await appKept(page);
  return page;
}

test('a newer version is told, waits, and is taken at a press with what was being typed', async () => {
  allowTrouble(GONE);
  const page = await visit();
  const { folder, build } = await changedBuild('press');
  await server.start(folder);
  await page.reload();
  await filled(page);
  // Kept first: the version that is here, until the newer one is taken.
  expect(await isOf(page, build)).toBe(false);
  await newerTold(page);
  await looksRight(page, 'newer-version');
  const loads = countLoads(page);
  await priceField(page).focus();
  await page.keyboard.press('ControlOrMeta+a');
  await page.keyboard.type('20.37');
  await page.getByRole('button', { name: 'Take it' }).click();
  await expect.poll(() => loads()).toBe(1);
  await priced(page);
  await expect.poll(() => isOf(page, build)).toBe(true);
  await expect.poll(() => priceField(page).inputValue()).toBe('20.37');
  await filled(page);
  await cutNetwork(page);
  await page.goto('/jobs');
  await page.getByRole('row', { name: /Ramblers Club shirts/ }).waitFor();
  expect(await isOf(page, build)).toBe(true);
  expect(await page.getByText('A newer version is here.').count()).toBe(0);
});

test('other tabs follow once, and one in which somebody types works on and is told', async () => {
  allowTrouble(GONE);
  const page = await visit();
  const typing = await openPage({ beside: page });
  const reading = await openPage({ beside: page, path: '/jobs' });
  await filled(typing);
  await appKept(typing);
  await appKept(reading);
  // Each listens once it is calm.
  for (const tab of [page, typing, reading]) await listens(tab);
  const { folder, build } = await changedBuild('tabs');
  await server.start(folder);
  await newerTold(page);
  await priceField(typing).focus();
  const loads = [countLoads(reading), countLoads(typing)] as const;
  await page.getByRole('button', { name: 'Take it' }).click();
  await priced(page);
  await reading.getByRole('row', { name: /Ramblers Club shirts/ }).waitFor();
  await expect.poll(() => isOf(reading, build)).toBe(true);
  await typing.getByText('A newer version was taken in another tab').waitFor();
  // Its own files are still there, those that it has not fetched yet too.
  await cutNetwork(typing);
  await section(typing, 'Sheets')
    .getByRole('button', { name: /^Sheets to print/ })
    .click();
  await typing.getByRole('button', { name: 'Every sheet, 47 pages' }).waitFor();
  const [download] = await Promise.all([
    typing.waitForEvent('download'),
    typing.getByRole('button', { name: 'Every sheet, 47 pages' }).click(),
  ]);
  expect(download.suggestedFilename()).toMatch(/\.pdf$/);
  await expect.poll(() => loads.map((count) => count())).toEqual([1, 0]);
});

test('a newer version with a newer store opens beside a tab of the version before, which says what it can no longer keep', async () => {
  allowTrouble(GONE);
  const page = await visit();
  const typing = await openPage({ beside: page });
  await filled(typing);
  for (const tab of [page, typing]) await listens(tab);
  const newer = { store: 0 };
  const { folder, build } = await changedBuild('store', {
    change: (text) =>
      text.replaceAll('version:40,tables:', () => {
        newer.store += 1;
        return 'version:50,tables:';
      }),
  });
  expect(newer.store).toBeGreaterThan(0);
  await server.start(folder);
  await newerTold(page);
  await type(priceField(typing), '20.37');
  await kept(typing);
  await page.getByRole('button', { name: 'Take it' }).click();
  await expect.poll(() => isOf(page, build)).toBe(true);
  await priced(page);
  await expect.poll(() => priceField(page).inputValue()).toBe('20.37');
  await typing.getByText('A newer version was taken in another tab').waitFor();
  await type(priceField(typing), '21.12');
  await typing
    .getByRole('alert')
    .filter({ hasText: 'Not kept. A newer version of this page is open in another tab' })
    .waitFor();
  await typing.getByRole('button', { name: 'Take it' }).click();
  await typing.getByText('The newer version waits: something you typed is not kept yet').waitFor();
  // Opened anew all the same, which the browser asks about.
  typing.on('dialog', (dialog) => void dialog.accept());
  await typing.reload();
  await priced(typing);
  await expect.poll(() => isOf(typing, build)).toBe(true);
  await expect.poll(() => priceField(typing).inputValue()).toBe('20.37');
});

test('when kept files are gone and the server has only newer ones, the page opens at once with those', async () => {
  allowTrouble(GONE);
  const page = await visit();
  const { folder, build } = await changedBuild('gone');
  await server.start(folder);
  await page.evaluate(async () => {
    for (const name of await caches.keys()) {
      const cache = await caches.open(name);
      for (const request of await cache.keys()) if (request.url.endsWith('.js')) await cache.delete(request);
    }
  });
  const loads = countLoads(page);
  await page.reload();
  await filled(page);
  await expect.poll(() => isOf(page, build)).toBe(true);
  await expect.poll(loads).toBe(1);
});

test('a link to a newer server opens the page as a document once', async () => {
  allowTrouble(GONE);
  const page = await openPage({ keptFrom: server.baseUrl, path: '/workshop' });
  await page.getByRole('heading', { level: 1, name: 'Exampleton Prints' }).waitFor();
  const { folder } = await changedBuild('link');
  await server.start(folder);
  const loads = countLoads(page);
  await page.getByRole('link', { name: 'Jobs', exact: true }).click();
  await page.getByRole('row', { name: /Ramblers Club shirts/ }).waitFor();
  await expect.poll(loads).toBe(1);
});

test('a part that is gone from the server is told of, the page offered anew once, and then no more', async () => {
  allowTrouble(GONE);
  const page = await openPage({ path: '/blanks' });
  const gone = new Set<string>();
  await page.context().route(/static\/chunks\/.*\.js/, async (route) => {
    const { pathname } = new URL(route.request().url());
    const response = await served(route);
    // What draws a chart, which is fetched when there is one to draw.
    if ((await response.text()).includes('data-chart')) gone.add(pathname);
    return gone.has(pathname) ? route.fulfill({ status: 404, body: '' }) : route.fulfill({ response });
  });
  await page.goto('/');
  const missing = page.getByRole('alert').filter({ hasText: 'the server has a newer version' }).first();
  await missing.getByRole('button', { name: 'Open it anew' }).waitFor();
  await looksRight(page, 'part-gone');
  const loads = countLoads(page);
  await missing.getByRole('button', { name: 'Open it anew' }).click();
  await missing.getByText('Opening the page anew did not help.').waitFor();
  expect(await missing.getByRole('button').count()).toBe(0);
  await expect.poll(loads).toBe(1);
});

test('of the first screen, too, a part that is gone is told of and the page offered anew once', async () => {
  allowTrouble(GONE);
  const page = await openPage({ path: '/blanks' });
  const parts = ['A newer version is here', 'The list of jobs'];
  const gone = new Set<string>();
  await page.context().route(/static\/chunks\/.*\.js/, async (route) => {
    const { pathname } = new URL(route.request().url());
    const response = await served(route);
    const text = await response.text();
    if (parts.some((part) => text.includes(part))) gone.add(pathname);
    return gone.has(pathname) ? route.fulfill({ status: 404, body: '' }) : route.fulfill({ response });
  });
  await page.goto('/');
  const missing = page.getByRole('alert').filter({ hasText: 'the server has a newer version' });
  const screen = missing.filter({ hasText: 'Your workshop could not be fetched' });
  const frame = missing.filter({
    hasText: 'Undo, redo and the word whether all is kept could not be fetched',
  });
  await screen.getByRole('button', { name: 'Open it anew' }).waitFor();
  await frame.getByRole('button', { name: 'Open it anew' }).waitFor();
  const loads = countLoads(page);
  await screen.getByRole('button', { name: 'Open it anew' }).click();
  await screen.getByText('Opening the page anew did not help.').waitFor();
  await frame.getByText('Opening the page anew did not help.').waitFor();
  expect(await missing.getByRole('button').count()).toBe(0);
  await expect.poll(loads).toBe(1);
});

test('a worker that is gone from the server is told as gone, and the page opened anew has its own', async () => {
  allowTrouble(GONE);
  const page = await openPage({ keptFrom: server.baseUrl });
  // As on plain http of another host, where browsers keep no app: nothing but the server has the files.
  await page.context().addInitScript(() => Reflect.deleteProperty(Navigator.prototype, 'serviceWorker'));
  await page.reload();
  await filled(page);
  expect(await page.evaluate(() => 'serviceWorker' in navigator)).toBe(false);
  const { folder, build } = await changedBuild('worker');
  await server.start(folder);
  const choose = async () => {
    await unfold(section(page, 'The job'), /^Back picture/);
    await page.getByLabel('Picture file of Hill path picture').setInputFiles('public/icons/mark-192.png');
  };
  await choose();
  const missing = page.getByRole('alert').filter({ hasText: '“mark-192.png” was not read' });
  await missing.getByText('the server has a newer version').waitFor();
  await missing.getByRole('button', { name: 'Open it anew' }).click();
  await expect.poll(() => isOf(page, build)).toBe(true);
  await priced(page);
  await choose();
  await page.getByText(/mark-192\.png, PNG/).waitFor();
});

test('an installation that mixes two builds is refused, and the version before stays whole', async () => {
  allowTrouble(GONE);
  const page = await visit();
  const before = await keptCounts(page);
  const { folder, build } = await changedBuild('mixed', { chunks: false });
  // Every file is there, but the list is of one build and the pages are of another, as while a new version goes out.
  const mixed = await changedBuild('mixedpages', { chunks: false });
  await mixLists(folder, mixed.folder);
  await server.start(mixed.folder);
  expect(await page.evaluate(async () => (await fetch('/sw.js')).text())).toContain(build);
  const states = () =>
    page.evaluate(async () => {
      const registration = await navigator.serviceWorker.getRegistration();
      return { installing: registration?.installing?.state, waiting: registration?.waiting?.state };
    });
  await page.evaluate(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    // What becomes of it is seen by the states.
    await registration?.update().catch(() => undefined);
  });
  await expect.poll(async () => (await states()).installing).toBe(undefined);
  expect(await states()).toEqual({ installing: undefined, waiting: undefined });
  // What came in of it goes again by itself.
  await expect.poll(() => keptCounts(page)).toEqual(before);
  await cutNetwork(page);
  await page.reload();
  await filled(page);
});
