import { expect, test } from 'vitest';
import { expectPriceBar, filled, kept, priced, section, type, unfold } from '@/tests/e2e/harness/docketPage';
import { looksRight, scrollsNowhere } from '@/tests/e2e/harness/looksRight';
import { openPage } from '@/tests/e2e/harness/openPage';
import { allowTrouble } from '@/tests/e2e/harness/problems';

test.each([1280, 390])(
  'a first visit at %d px finds the finished example, and it looks right',
  async (width) => {
    const page = await openPage({ width });
    await priced(page);
    await expectPriceBar(
      page,
      /19\.00.*pays you 56\.26 an hour, selling included.*711\.50 for 37; with tax 761\.31.*margin 40\.5 %/,
    );
    // The checks are drawn after the price.
    await section(page, 'Checks')
      .getByText(/Nothing stops it/)
      .waitFor();
    // The last section of figures is the last to be worked out.
    await section(page, 'Ways of selling').getByText('best;', { exact: false }).waitFor();
    await looksRight(page, 'first-visit');
  },
);

test('an edit shows at once, is undone and redone, and is there again after a reload', async () => {
  const page = await openPage();
  await priced(page);
  const price = section(page, 'The job').getByRole('textbox', { name: 'Price of a shirt', exact: true });
  // At once: letters that come a second apart would be steps of their own.
  await price.fill('21');
  await expectPriceBar(page, /21\.00.*margin 4[56]/);
  await price.blur();
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expectPriceBar(page, /19\.00.*margin 40\.5 %/);
  await page.getByRole('button', { name: /^Redo/ }).click();
  await expectPriceBar(page, /21\.00/);
  await kept(page);
  await page.reload();
  await priced(page);
  await expectPriceBar(page, /21\.00/);
});

test('an opened figure and a stop look right', async () => {
  const page = await openPage();
  await priced(page);
  const cost = section(page, 'Cost');
  await unfold(cost, 'Every line by size');
  await cost.getByRole('button', { name: 'Electricity, L: 0.01' }).click();
  await cost.getByRole('button', { name: /^Electricity, nothing spoiled/ }).waitFor();
  const job = section(page, 'The job');
  await job.getByText('Packaging, up-charges, name').click();
  await type(job.getByRole('textbox', { name: 'Pieces the customer said in all' }), '38');
  await section(page, 'Checks').getByText('the sizes add up to 37, the order says 38').waitFor();
  await expectPriceBar(page, /last good price/i);
  await looksRight(page, 'stop');
});

test('an edit made without a network is priced, kept, and there when the network is back', async () => {
  const page = await openPage();
  await priced(page);
  // On a busy machine what the page fetches ahead may not be there yet. It is tried again where it is needed.
  allowTrouble(/ERR_INTERNET_DISCONNECTED/);
  await page.context().setOffline(true);
  await type(section(page, 'The job').getByRole('textbox', { name: 'Price of a shirt', exact: true }), '20');
  await expectPriceBar(page, /20\.00.*margin 4\d/);
  await kept(page);
  await page.context().setOffline(false);
  await page.reload();
  await priced(page);
  await expectPriceBar(page, /20\.00/);
});

test('what could not be worked out for want of a network is, once it is back', async () => {
  const page = await openPage({ path: '/jobs' });
  allowTrouble(/ERR_INTERNET_DISCONNECTED/);
  // The first worker prices; the second, of all other sums, is there no code for.
  let workers = 0;
  await page.route(/\/_next\/static\/chunks\//, async (route) => {
    if (route.request().url().includes('turbopack-worker')) workers += 1;
    const isPastStart = workers >= 2 && !route.request().url().includes('turbopack-worker');
    await (isPastStart ? route.abort('internetdisconnected') : route.continue());
  });
  await page.goto('/');
  await priced(page);
  await expect.poll(() => workers).toBe(2);
  const ways = section(page, 'Ways of selling');
  await ways.waitFor();
  expect(await ways.getByText('best;', { exact: false }).count()).toBe(0);
  await page.context().setOffline(true);
  await page.unroute(/\/_next\/static\/chunks\//);
  await page.context().setOffline(false);
  await ways.getByText('best;', { exact: false }).waitFor();
});

test('two tabs at one job lose no edit of either', async () => {
  const first = await openPage();
  await priced(first);
  const second = await openPage({ beside: first });
  await priced(second);
  await type(section(first, 'The job').getByRole('textbox', { name: 'Price of a shirt', exact: true }), '22');
  await type(
    section(second, 'The job').getByRole('textbox', {
      name: 'Most they pay',
      exact: true,
    }),
    '25',
  );
  await kept(first);
  await kept(second);
  for (const page of [first, second]) {
    await expectPriceBar(page, /22\.00/);
    await expect
      .poll(() =>
        section(page, 'The job').getByRole('textbox', { name: 'Most they pay', exact: true }).inputValue(),
      )
      .toMatch(/^25/);
  }
});

test.each([1280, 390])('text at twice its size scrolls nothing sideways at %d px', async (width) => {
  const page = await openPage({ width });
  for (const path of [
    '/',
    '/jobs',
    '/workshop',
    '/blanks',
    '/price-lists/club-prices',
    '/jobs/club-order/sheet',
  ]) {
    await page.goto(path);
    await page.getByRole('heading', { level: 1 }).first().waitFor();
    if (path === '/') await filled(page);
    // As wide as it gets: with the figures of every job.
    if (path === '/jobs')
      await page
        .getByRole('row', { name: /Ramblers/ })
        .getByText('40.5 %')
        .waitFor();
    await page.evaluate(() => document.documentElement.style.setProperty('font-size', '200%'));
    await scrollsNowhere(page);
  }
});
