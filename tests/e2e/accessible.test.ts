import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { takeIn } from '@/tests/e2e/harness/copyFiles';
import { filled, kept } from '@/tests/e2e/harness/docketPage';
import { looksRight } from '@/tests/e2e/harness/looksRight';
import { openPage } from '@/tests/e2e/harness/openPage';
import { unfoldAll } from '@/tests/e2e/harness/unfoldAll';

test.each([
  ['/', 1280],
  ['/', 390],
  ['/jobs/fair-mugs', 1280],
  ['/jobs/fair-mugs', 390],
])('the docket at %s looks right with every fold opened, at %d px', async (path, width) => {
  const page = await openPage({ path, width });
  await filled(page);
  expect(await unfoldAll(page)).toBeGreaterThan(20);
  await looksRight(page, `docket-unfolded${path.replaceAll('/', '-')}`);
});

test.each([
  ['/workshop', 1280],
  ['/workshop', 390],
  ['/blanks', 1280],
  ['/blanks', 390],
  ['/orders', 1280],
  ['/orders', 390],
  ['/orders/club-enquiry', 1280],
  ['/orders/club-enquiry', 390],
  ['/stall', 1280],
  ['/stall', 390],
  ['/stall/spring-fair', 1280],
  ['/stall/spring-fair', 390],
  ['/year', 1280],
  ['/year', 390],
  ['/making', 1280],
  ['/making', 390],
  ['/customers', 1280],
  ['/customers', 390],
])('%s looks right folded and unfolded, at %d px', async (path, width) => {
  const page = await openPage({ path, width });
  await page.getByRole('heading', { level: 1 }).waitFor();
  const name = path.slice(1).replaceAll('/', '-');
  await looksRight(page, name);
  expect(await unfoldAll(page)).toBeGreaterThan(0);
  await looksRight(page, `${name}-unfolded`);
});

test.each([1280, 390, 320])('suppliers and a buying list look right, at %d px', async (width) => {
  const page = await openPage({ path: '/making/suppliers', width });
  await page.getByRole('textbox', { name: 'New supplier' }).fill('Sample Mill');
  await page.getByRole('textbox', { name: 'New supplier' }).press('Enter');
  await page.getByRole('combobox', { name: 'A further offer of' }).selectOption({ index: 1 });
  await page.getByRole('button', { name: 'Add it' }).first().click();
  await page.getByRole('button', { name: 'Goods in' }).click();
  await looksRight(page, 'making-suppliers');
  await page.goto('/making/buying');
  await page.getByRole('button', { name: 'New list' }).click();
  await page.getByRole('checkbox', { name: /not accepted yet/ }).check();
  await page.getByRole('button', { name: 'Make the list' }).click();
  await page.getByRole('button', { name: 'Order from Sample Mill' }).click();
  await page.getByRole('button', { name: /^Issue order/ }).waitFor();
  await looksRight(page, 'making-buying-list');
});

test.each([1280, 390, 320])(
  'a run that was made looks right folded and unfolded, at %d px',
  async (width) => {
    const page = await openPage({ path: '/workshop#copies', width });
    await takeIn(page, 'public/examples/club-run.json');
    await page.goto('/making/club-run/after');
    await page.getByRole('heading', { level: 1, name: /, after the run$/ }).waitFor();
    await page.getByRole('heading', { level: 2, name: 'Over all runs' }).waitFor();
    await looksRight(page, 'making-after');
    expect(await unfoldAll(page)).toBeGreaterThan(5);
    await looksRight(page, 'making-after-unfolded');
    await page.getByRole('button', { name: /^Take it over: Price of White shirt/ }).click();
    await page.getByRole('button', { name: /^Take back: Price of White shirt/ }).waitFor();
    await page.getByRole('button', { name: 'Open the run again' }).click();
    await page.getByRole('button', { name: 'Start the clock' }).click();
    await page.getByRole('button', { name: 'Stop and note it' }).waitFor();
    await looksRight(page, 'making-after-clock');
    await kept(page);
    await page.goto('/making/stock');
    await page.getByRole('button', { name: /^White shirt/ }).click();
    await page.getByRole('button', { name: 'Count or note M' }).click();
    await page.getByRole('button', { name: 'Note it' }).waitFor();
    await looksRight(page, 'making-stock');
  },
);

test.each([1280, 320])(
  'a run looks right planned, and begun with what it began with, at %d px',
  async (width) => {
    const page = await openPage({ path: '/making', width });
    await page.getByRole('button', { name: 'New run' }).click();
    await page.getByRole('checkbox', { name: 'Ramblers Club shirts' }).check();
    await looksRight(page, 'making-new');
    await page.getByRole('button', { name: 'Plan it' }).click();
    await page.getByRole('button', { name: 'Begin', exact: true }).waitFor();
    await figured(page);
    expect(await unfoldAll(page)).toBeGreaterThan(0);
    await figured(page);
    await looksRight(page, 'making-run-planned');
    await page.getByRole('button', { name: 'Begin', exact: true }).click();
    await page.getByRole('link', { name: 'To the press' }).first().waitFor();
    await figured(page);
    await unfoldAll(page);
    await looksRight(page, 'making-run-begun');
  },
);

test.each([1280, 390, 320])('a shop looks right with goods to bring there, at %d px', async (width) => {
  const page = await openPage({ path: '/stall/shops', width });
  await page.getByRole('heading', { level: 1, name: 'Shops' }).waitFor();
  await looksRight(page, 'stall-shops');
  await page.getByRole('button', { name: 'New shop' }).click();
  await page.getByRole('textbox', { name: 'Name of the shop' }).fill('Corner shop');
  await page.getByRole('button', { name: 'Add' }).click();
  await page.getByRole('heading', { level: 1, name: 'Corner shop' }).waitFor();
  await page.getByRole('button', { name: 'Bring goods there' }).click();
  await page.getByRole('combobox', { name: 'Design' }).selectOption('Fern shirt, Spring Fair shirts');
  await page.getByRole('combobox', { name: 'Size' }).selectOption('M');
  await page.getByRole('textbox', { name: 'How many' }).fill('6');
  await looksRight(page, 'stall-shops-out');
  await page.getByRole('textbox', { name: 'Counted at home before' }).fill('8');
  await page.getByRole('button', { name: 'Note it' }).click();
  await page.getByText('6 pieces').waitFor();
  await page.getByRole('button', { name: 'Note a statement' }).click();
  await page.getByRole('textbox', { name: 'Sold' }).fill('3');
  await looksRight(page, 'stall-shops-statement');
});

test.each([1280, 390])('what can be done with stall days stands apart, at %d px', async (width) => {
  const page = await openPage({ path: '/stall', width });
  const shops = await page.getByRole('link', { name: 'Shops on consignment' }).boundingBox();
  const adds = await page.getByRole('button', { name: 'New stall day' }).boundingBox();
  if (shops === null || adds === null) throw new Error('not on the page');
  const beside = adds.x - (shops.x + shops.width);
  const beneath = adds.y - (shops.y + shops.height);
  // Half a line, as everywhere that buttons stand in a row.
  expect(Math.max(beside, beneath)).toBeGreaterThanOrEqual(8);
});

test.each([1280, 390])('a customer looks right, at %d px', async (width) => {
  const page = await openPage({ path: '/customers/ramblers-club', width });
  await page.getByRole('heading', { level: 1, name: 'Exampleton Ramblers Club' }).waitFor();
  await looksRight(page, 'customers-ramblers-club');
});

// Helpers

/** No figure of a run is still being worked out. */
const figured = (page: Page): Promise<void> =>
  expect.poll(() => page.locator('main [aria-busy="true"]').count()).toBe(0);
