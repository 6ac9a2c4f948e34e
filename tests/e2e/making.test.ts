import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { kept, section } from '@/tests/e2e/harness/docketPage';
import { appKept, cutNetwork } from '@/tests/e2e/harness/keptApp';
import { openPage } from '@/tests/e2e/harness/openPage';
import { type OwnServer, ownServer } from '@/tests/e2e/harness/ownServer';

/* One run over its whole life: from its order to what came of it, the making itself without a network. */

let server: OwnServer;

beforeEach(async () => {
  server = await ownServer(process.cwd());
  await server.start();
});

afterEach(() => server.end());

const plate = (page: Page) => section(page, 'The run in short');
const expectPlate = (page: Page, words: RegExp) =>
  expect.poll(async () => (await plate(page).textContent()) ?? '').toMatch(words);
const key = (page: Page, name: RegExp) => page.locator('[data-press]').getByRole('button', { name });
const pressKept = (page: Page) => page.getByText(/^no signal needed · kept/).waitFor();

test('a run is planned from its order, begun, pressed, looked back at and closed, through reloads and no network', async () => {
  const page = await openPage({ keptFrom: server.baseUrl, path: '/orders/club-enquiry' });
  await page.getByRole('link', { name: 'Make it: plan the run' }).click();
  await page.getByRole('button', { name: 'Plan it' }).click();
  // Clock: one Saturday morning holds all 37 shirts.
  await expectPlate(page, /: 37 pieces, one heating-up/);
  const run = new URL(page.url()).pathname;
  await kept(page);

  await appKept(page);
  await cutNetwork(page);
  await server.end();
  await page.reload();
  await expectPlate(page, /Not begun\./);
  await page.getByRole('button', { name: 'Begin', exact: true }).click();
  await page.getByRole('link', { name: 'To the press' }).waitFor();
  await kept(page);
  await page.reload();
  // What was frozen, not a plan of now: 13 blanks of L are laid out for 11.
  const sizes = page.getByRole('table', { name: 'Pieces by size as the run began' });
  await expect.poll(() => sizes.getByRole('row', { name: /^L / }).textContent()).toBe('L111302');

  await page.goto(`${run}/press`);
  for (let piece = 0; piece < 3; piece += 1) await key(page, /^Good/).click();
  await key(page, /^Scrap/).click();
  await key(page, /^Ghost$/).click();
  await pressKept(page);
  await page.reload();
  await key(page, /^Good 3 so far of 37/).waitFor();
  await key(page, /^Scrap 1 so far, ghost/).waitFor();

  await page.goto(run);
  await expectPlate(page, /^3 of 37 good, Back picture; 1 lost; this print done about/);
  await page.getByRole('button', { name: /^Note “Printed” of/ }).click();
  await expect.poll(() => page.getByRole('button', { name: /^Note “/ }).count()).toBe(0);
  await kept(page);

  await page.goto(`${run}/after`);
  await page.getByRole('button', { name: 'Close the run' }).click();
  await page.getByRole('button', { name: 'Open the run again' }).waitFor();
  await kept(page);
  await page.goto(run);
  await expectPlate(page, /profit, .* USD as quoted; 0 good, 1 lost.*Closed\./);
  await page.reload();
  await expectPlate(page, /Closed\./);
  // Nothing is bought for a run that is over.
  expect(await page.getByText(/blanks short/).count()).toBe(0);
});
