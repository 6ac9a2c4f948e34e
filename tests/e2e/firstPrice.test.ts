import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { looksRight, scrollsNowhere } from '@/tests/e2e/harness/looksRight';
import { openPage } from '@/tests/e2e/harness/openPage';
import { allowTrouble } from '@/tests/e2e/harness/problems';

/** More presses and typed fields than this before a first own price are too many. */
const MOST_ACTIONS = 8;

const priceOf = (page: Page) => page.getByRole('region', { name: 'Price', exact: true });
const card = (page: Page, name: string) => page.locator('label', { hasText: name }).first();

const lowerEdge = async (thing: Locator) => {
  const box = await thing.boundingBox();
  return (box?.y ?? 480) + (box?.height ?? 0);
};

/** Presses things one after the other and counts them, each reached as a person reaches it. */
function counting() {
  let actions = 0;
  return {
    press: async (target: Locator) => {
      actions += 1;
      await target.click();
    },
    get actions() {
      return actions;
    },
  };
}

/** From the front door to a price of one's own, and into its job. */
async function firstPrice(page: Page, thing: string, per: string): Promise<number> {
  const hand = counting();
  await hand.press(page.getByRole('link', { name: /start your own workshop/i }).first());
  await hand.press(card(page, thing));
  await priceOf(page).getByText('would pay you').waitFor();
  await expect.poll(() => priceOf(page).textContent()).toContain(per);
  const priced = hand.actions;
  await hand.press(page.getByRole('button', { name: 'Open the job' }));
  await page.getByRole('slider').first().waitFor();
  expect(hand.actions).toBeLessThanOrEqual(MOST_ACTIONS);
  return priced;
}

test.each([
  [1280, 'Shirts', 'a shirt, S to XL'],
  [390, 'Shirts', 'a shirt, S to XL'],
  [1280, 'Mugs', 'a mug'],
  [390, 'Mugs', 'a mug'],
])(
  'at %d px a first price for %s takes two presses, and its job opens with it',
  async (width, thing, per) => {
    const page = await openPage({ width });
    expect(await firstPrice(page, thing, per)).toBe(2);
    await expect.poll(() => new URL(page.url()).pathname).toBe('/jobs/first-job');
  },
);

test.each([1280, 390])('at %d px the start looks right before and with a price', async (width) => {
  const page = await openPage({ width, path: '/start' });
  await card(page, 'Shirts').waitFor();
  await looksRight(page, `start-empty-${width}`);
  await card(page, 'Shirts').click();
  await priceOf(page).getByText('would pay you').waitFor();
  await page.getByRole('button', { name: 'The dozen figures that matter most' }).click();
  await page.getByRole('button', { name: /^Money and units/ }).click();
  await looksRight(page, `start-${width}`);
});

test('with the keys of a phone up, the price and the way on stay in sight under a fifth of the screen', async () => {
  const page = await openPage({ width: 390, path: '/start' });
  await page.setViewportSize({ width: 390, height: 480 });
  await card(page, 'Shirts').click();
  await priceOf(page).getByText('would pay you').waitFor();
  const field = page.getByRole('textbox', { name: 'XL', exact: true });
  await field.scrollIntoViewIfNeeded();
  await field.focus();
  const barTop = async () => (await priceOf(page).boundingBox())?.y ?? 0;
  await expect.poll(async () => (await priceOf(page).boundingBox())?.height).toBeLessThanOrEqual(480 / 5);
  await expect
    .poll(() => lowerEdge(page.getByRole('button', { name: 'Open the job' })))
    .toBeLessThanOrEqual(480);
  // What is typed in is not under the bar.
  await expect.poll(async () => (await lowerEdge(field)) - (await barTop())).toBeLessThanOrEqual(0);
  await scrollsNowhere(page);
});

test('with letters twice as large nothing of the start lies beside the page, and the bar stays low', async () => {
  const page = await openPage({ width: 390, path: '/start' });
  await card(page, 'Shirts').click();
  await priceOf(page).getByText('would pay you').waitFor();
  await page.evaluate(() => document.documentElement.style.setProperty('font-size', '200%'));
  await scrollsNowhere(page);
  const bar = await priceOf(page).boundingBox();
  expect(bar?.height).toBeLessThanOrEqual(844 / 5);
});

test('a metric visitor finds the example and the start in the money and paper of the place', async () => {
  const page = await openPage({ locale: 'de-DE', path: '/start' });
  await card(page, 'Shirts').click();
  await priceOf(page)
    .getByText(/EUR for 12; tax not decided yet/)
    .waitFor();
  await expect.poll(() => page.getByRole('radio', { name: /^A4/ }).isChecked()).toBe(true);
  await page.goto('/workshop');
  await page.getByText('A4 sheet').first().waitFor();
});

test('a start works without a network once it is there, and what was chosen outlives a reload', async () => {
  const page = await openPage({ path: '/start' });
  await card(page, 'Mugs').click();
  await priceOf(page).getByText('would pay you').waitFor();
  allowTrouble(/ERR_INTERNET_DISCONNECTED/);
  await page.context().setOffline(true);
  await card(page, 'Bags').click();
  await priceOf(page).getByText('a bag').waitFor();
  await priceOf(page).getByText('would pay you').waitFor();
  await page.context().setOffline(false);
  await page.reload();
  await priceOf(page).getByText('a bag').waitFor();
  await expect.poll(() => page.getByRole('radio', { name: 'Bags' }).isChecked()).toBe(true);
});
