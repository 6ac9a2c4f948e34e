import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { kept, priced, section } from '@/tests/e2e/harness/docketPage';
import { holdWrites } from '@/tests/e2e/harness/keptStore';
import { openPage } from '@/tests/e2e/harness/openPage';
import { expectProblem } from '@/tests/e2e/harness/problems';

/** The browser's own remarks on what it could not fetch. */
const NOT_FETCHED = /ERR_INTERNET_DISCONNECTED|Failed to fetch|NetworkError|Failed to load/;

const cutNetwork = (page: Page) => page.context().setOffline(true);
const mendNetwork = (page: Page) => page.context().setOffline(false);
const levers = (page: Page) => page.getByRole('list', { name: 'Levers, biggest first' });
const priceField = (page: Page) =>
  section(page, 'The job').getByRole('textbox', { name: 'Price of a shirt', exact: true });

test('a network cut right after the price appeared is told of, and all comes once it is back', async () => {
  const page = await openPage({ path: '/workshop' });
  // The first worker prices. However long it takes until the network is cut, the code of the second is not there by then.
  let tellCut: () => void = () => undefined;
  const cut = new Promise<void>((resolve) => {
    tellCut = resolve;
  });
  let workers = 0;
  await page.route(/turbopack-worker/, async (route) => {
    workers += 1;
    const isSecond = workers === 2;
    if (isSecond) await cut;
    await (isSecond ? route.abort('internetdisconnected') : route.continue());
  });
  await page.goto('/');
  await priced(page);
  await cutNetwork(page);
  tellCut();
  const missing = page.getByRole('alert').filter({ hasText: 'could not be fetched' });
  await missing.first().waitFor();
  await mendNetwork(page);
  await levers(page).waitFor();
  await expect.poll(() => missing.count()).toBe(0);
  await expectProblem(NOT_FETCHED);
});

test('workers that cannot be fetched are told of with a way to try again, and come by themselves', async () => {
  const page = await openPage({ path: '/workshop' });
  const context = page.context();
  await context.route(/turbopack-worker/, (route) => route.abort());
  const docket = await openPage({ beside: page });
  const sums = docket.getByRole('alert').filter({ hasText: 'There are no new sums' });
  await sums.getByRole('button', { name: 'Try again' }).waitFor();
  await context.unroute(/turbopack-worker/);
  await priced(docket);
  await levers(docket).waitFor();
});

test('a link without a network on a first visit stays on the page, which works on, and opens once the network is back', async () => {
  const page = await openPage();
  await priced(page);
  await levers(page).waitFor();
  await cutNetwork(page);
  await page.getByRole('link', { name: 'Workshop', exact: true }).click();
  await page.getByText('could not be fetched; you can go on here').waitFor();
  await priceField(page).fill('21');
  await page.getByRole('region', { name: 'Price', exact: true }).getByText('21.00').first().waitFor();
  await kept(page);
  await mendNetwork(page);
  await page.getByRole('heading', { level: 1, name: 'Exampleton Prints' }).waitFor();
  await expectProblem(NOT_FETCHED);
});

test('a price typed fast on a page that is closed at once is not lost without the browser asking', async () => {
  const page = await openPage();
  await priced(page);
  await kept(page);
  const asked = new Promise<string>((resolve) => {
    page.on('dialog', (dialog) => {
      resolve(dialog.type());
      void dialog.dismiss();
    });
  });
  // However long it takes until the page is closed, what was typed is not written by then.
  const letWrite = await holdWrites(page);
  await priceField(page).focus();
  await page.keyboard.press('ControlOrMeta+a');
  await page.keyboard.type('20.37');
  await page.close({ runBeforeUnload: true });
  expect(await asked).toBe('beforeunload');
  await letWrite();
  await kept(page);
  await page.reload();
  await priced(page);
  await expect.poll(() => priceField(page).inputValue()).toBe('20.37');
});

test('a page on which all is kept goes without being asked for', async () => {
  const page = await openPage();
  await priced(page);
  await priceField(page).fill('20.37');
  await priceField(page).blur();
  await kept(page);
  const closed = page.waitForEvent('close');
  await page.close({ runBeforeUnload: true });
  await closed;
});
