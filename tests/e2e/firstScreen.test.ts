import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { kept } from '@/tests/e2e/harness/docketPage';
import { openPage } from '@/tests/e2e/harness/openPage';
import { takePace, watchPace } from '@/tests/e2e/harness/pace';
import { allowTrouble } from '@/tests/e2e/harness/problems';
import { shot } from '@/tests/e2e/harness/shot';

/** What moves unasked, share of the screen times way: the head that is sent gives way without a jump. */
const MOST_SHIFT = 0.02;

/** A page that has not been opened, so that it can be watched from its first moment. */
const unopened = (options: Parameters<typeof openPage>[0] = {}) =>
  openPage({ ...options, path: 'about:blank' });

async function withoutScripts(page: Page): Promise<void> {
  allowTrouble(/ERR_FAILED/);
  await page.route('**/*.js', (route) => route.abort());
}

/** Notes every price that can be seen at any moment of every page to come. */
const notePrices = (page: Page) =>
  page.addInitScript(() => {
    const seen = new Set<string>();
    Reflect.set(window, 'pricesSeen', seen);
    const look = () => {
      for (const figure of document.querySelectorAll('[data-figure="price"]'))
        if (figure.checkVisibility()) seen.add(figure.textContent ?? '');
      requestAnimationFrame(look);
    };
    requestAnimationFrame(look);
  });
const pricesSeen = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => [...Reflect.get(window, 'pricesSeen')]);

const shown = (page: Page, figure: string) => page.locator(`[data-figure="${figure}"]:visible`).first();
const live = (page: Page) => page.getByRole('slider').first();

test.each([1280, 390])('at %d px the example can be read before any script has come', async (width) => {
  const page = await unopened({ width });
  await withoutScripts(page);
  await page.goto('/');
  // The worked example: 37 shirts at 19.00 make 711.50, and pay 56.26 an hour.
  expect(await shown(page, 'price').textContent()).toBe('19.00');
  expect(await shown(page, 'pay').textContent()).toBe('56.26');
  expect(await shown(page, 'total').textContent()).toBe('711.50');
  await page.getByRole('heading', { name: 'Ramblers Club shirts' }).waitFor();
  await shot(page, `first-screen-sent-${width}`);
});

test.each([1280, 800, 390])('at %d px the live docket takes its place without a jump', async (width) => {
  const page = await unopened({ width });
  await watchPace(page);
  await notePrices(page);
  await page.goto('/');
  await live(page).waitFor();
  await page.locator('[data-example-head]').waitFor({ state: 'detached' });
  const { shift, moved } = await takePace(page);
  expect(shift, moved.join('\n')).toBeLessThanOrEqual(MOST_SHIFT);
  expect(await pricesSeen(page)).toEqual(['19.00']);
});

test('the example is sent in the money of the place, and the docket says the same', async () => {
  const page = await unopened({ locale: 'de-DE' });
  await notePrices(page);
  await page.goto('/');
  await live(page).waitFor();
  await expect.poll(() => pricesSeen(page)).toEqual(['23,00']);
});

test.each([
  ['there are things of one’s own', { 'pressminute-visit': '{"at":1764150000000,"holdsOwn":true}' }],
  ['another job was looked at last', { 'pressminute-last-job': 'my-job' }],
])('nobody sees the price of the example where %s', async (_why, kept) => {
  const page = await unopened();
  await page.addInitScript((items) => {
    for (const [key, value] of Object.entries(items)) localStorage.setItem(key, value);
  }, kept);
  await withoutScripts(page);
  await page.goto('/');
  await page.locator('[data-price-bar]:visible').waitFor();
  expect(await page.locator('[data-figure]:visible').allTextContents()).toEqual(['–.––']);
  await shot(page, 'first-screen-own');
});

test('who was here and kept nothing of their own sees the example at once', async () => {
  const page = await unopened();
  await page.addInitScript(() =>
    localStorage.setItem('pressminute-visit', '{"at":1764150000000,"holdsOwn":false}'),
  );
  await withoutScripts(page);
  await page.goto('/');
  expect(await shown(page, 'price').textContent()).toBe('19.00');
});

test('a browser that asks in one language and speaks another sees no foreign money', async () => {
  const page = await unopened();
  await page.addInitScript(() =>
    Object.defineProperty(Navigator.prototype, 'language', { get: () => 'de-DE' }),
  );
  await withoutScripts(page);
  await page.goto('/');
  await page.locator('[data-price-bar]:visible').waitFor();
  expect(await page.locator('[data-figure]:visible').allTextContents()).toEqual(['–.––']);
});

test('a price of one’s own is the only one that is seen on the next visit', async () => {
  const page = await openPage();
  await live(page).press('ArrowRight');
  await page.getByRole('button', { name: /^Undo ?: / }).waitFor();
  await kept(page);
  await expect.poll(() => shown(page, 'price').textContent()).not.toBe('19.00');
  const own = (await shown(page, 'price').textContent()) ?? '';
  await page.evaluate(() =>
    localStorage.setItem('pressminute-visit', '{"at":1764150000000,"holdsOwn":true}'),
  );
  await notePrices(page);
  await page.reload();
  await live(page).waitFor();
  await expect.poll(async () => (await pricesSeen(page)).filter((price) => /\d/.test(price))).toEqual([own]);
});
