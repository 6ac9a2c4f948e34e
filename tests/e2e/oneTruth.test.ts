import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { takeIn } from '@/tests/e2e/harness/copyFiles';
import { filled, kept, priced, section, type, unfold } from '@/tests/e2e/harness/docketPage';
import { looksRight, scrollsNowhere } from '@/tests/e2e/harness/looksRight';
import { openPage } from '@/tests/e2e/harness/openPage';

/** Every figure of one name on the page, without its currency or unit. */
const figures = (page: Page, name: string): Promise<readonly string[]> =>
  page
    .locator(`[data-figure="${name}"]`)
    .evaluateAll((found) => found.map(({ textContent }) => (textContent ?? '').replace(/[^\d.,−-]/g, '')));

/** Unfolds what shows figures of the job again: the ways of selling side by side, and the curve as a table. */
async function bringAll(page: Page): Promise<void> {
  await filled(page);
  for (const [name, fold] of [
    ['Ways of selling', 'Four ways side by side'],
    ['Batch', 'As a table'],
  ] as const) {
    await unfold(section(page, name), fold);
    await section(page, name).locator('[data-figure="pay"]').last().waitFor();
  }
}

async function expectOne(page: Page): Promise<{ readonly margin: string; readonly pay: string }> {
  await bringAll(page);
  const of = async (name: string) => {
    // The head, its short form while it is scrolled away, the curve and its table, the job's own way of selling.
    await expect.poll(async () => (await figures(page, name)).length).toBeGreaterThanOrEqual(4);
    await expect.poll(async () => new Set(await figures(page, name)).size).toBe(1);
    const all = await figures(page, name);
    expect(all.length).toBeGreaterThanOrEqual(4);
    return all[0] ?? '';
  };
  return { margin: await of('margin'), pay: await of('pay') };
}

test('a stall job with tax inside has one margin and one pay an hour everywhere, selling counted or not', async () => {
  const page = await openPage({ path: '/jobs/fair-mugs' });
  await priced(page);
  const before = await expectOne(page);
  await page.evaluate(() => scrollTo(0, 0));
  await page.getByRole('link', { name: 'selling not counted' }).click();
  const minutes = page.locator('[id^="workshop-channels-1-sellingMinutesPerPiece"]').first();
  await type(minutes, '7');
  await minutes.blur();
  await kept(page);
  await page.goto('/jobs/fair-mugs');
  await priced(page);
  await page.getByText('A mug bears 7 min of selling.').waitFor();
  const after = await expectOne(page);
  expect(Number(after.pay)).toBeLessThan(Number(before.pay));
  expect(Number(after.margin)).toBeLessThan(Number(before.margin));
});

test('an order has one margin and one pay an hour everywhere', async () => {
  const page = await openPage();
  await priced(page);
  expect(await expectOne(page)).toEqual({ margin: '40.5', pay: '56.26' });
});

test('a run that was made came to one profit and one pay an hour everywhere', async () => {
  const page = await openPage({ path: '/workshop#copies' });
  await takeIn(page, 'public/examples/club-run.json');
  await page.goto('/making/club-run');
  await section(page, 'The run in short').getByText('254.44 USD profit, 288.37 USD as quoted').waitFor();
  await page.getByRole('link', { name: 'What came of it' }).click();
  const saysOf = async (name: string) =>
    (await page.locator('dl > div', { hasText: name }).first().locator('dd').textContent()) ?? '';
  await page.getByRole('heading', { level: 2, name: 'Over all runs' }).waitFor();
  const row = page.getByRole('row', { name: /^Profit as it came/ });
  expect(await saysOf('profit, of 288.37 quoted')).toBe('254.44');
  expect(await row.textContent()).toContain('254.44');
  const closed = page.getByRole('table', { name: /^Closed runs: quoted, made and paid/ });
  const cells = await closed.getByRole('cell').allTextContents();
  expect(cells.slice(-4)).toEqual(['288.37', '254.44', '56.26', '48.29']);
  expect(await saysOf('it paid you an hour')).toBe('48.29');
  expect(await saysOf('as quoted')).toBe('56.26');
});

test.each([1280, 390])(
  'the price in short stays in sight when its bar is scrolled away at %d px',
  async (width) => {
    const page = await openPage({ width });
    await priced(page);
    await section(page, 'Checks').scrollIntoViewIfNeeded();
    await page.evaluate(() => scrollTo(0, document.body.scrollHeight / 2));
    const short = page.getByRole('complementary', { name: 'Price in short' });
    await short.getByText('19.00').waitFor();
    await looksRight(page, `price-in-short-${width}`);
    const most = width < 600 ? 844 / 5 : 61;
    await expect.poll(async () => (await short.boundingBox())?.height).toBeLessThanOrEqual(most);
  },
);

test('with type at twice its size the ruler keeps its figures apart, and the bar at the thumb takes a fifth at most', async () => {
  const page = await openPage({ width: 390 });
  await priced(page);
  await page.evaluate(() => {
    document.documentElement.style.fontSize = '200%';
  });
  await page.locator('[data-price-bar] dl').waitFor();
  await scrollsNowhere(page);
  const boxes = await page
    .locator('[data-price-bar] dl > div')
    .evaluateAll((rows) =>
      rows.map((row) => row.getBoundingClientRect()).map(({ top, bottom }) => ({ top, bottom })),
    );
  for (const [index, { top }] of boxes.slice(1).entries()) {
    expect(top).toBeGreaterThanOrEqual(boxes[index]?.bottom ?? 0);
  }
  // With every section worked out, too.
  await section(page, 'Ways of selling').getByText('best;', { exact: false }).waitFor();
  await page.locator('#curve').scrollIntoViewIfNeeded();
  await page.locator('#curve [data-figure="pay"]').waitFor();
  await scrollsNowhere(page);
  await page.evaluate(() => scrollTo(0, document.body.scrollHeight / 2));
  const short = page.getByRole('complementary', { name: 'Price in short' });
  await short.waitFor();
  await expect.poll(async () => (await short.boundingBox())?.height).toBeLessThanOrEqual(844 / 5);
  // The price is there to its last digit.
  const cut = await short.locator('[data-figure="price"]').evaluate((figure) => {
    const room = figure.parentElement?.getBoundingClientRect().right ?? 0;
    return figure.getBoundingClientRect().right - room;
  });
  expect(cut).toBeLessThanOrEqual(0);
  // With the keyboard up it makes room for what is typed.
  await page.setViewportSize({ width: 390, height: 480 });
  await short.waitFor({ state: 'hidden' });
});

test('each mark of the ruler has its figure on a phone, and tells its name at a touch', async () => {
  const page = await openPage({ width: 390 });
  await priced(page);
  const bar = page.getByRole('region', { name: 'Price', exact: true });
  const marks = bar.locator('button[aria-pressed]');
  // The four prices of a ruler: what pays the bills, the minutes, all of it, and the margin aimed for.
  await expect.poll(() => marks.count()).toBeGreaterThanOrEqual(4);
  expect(await marks.evaluateAll((all) => all.map((one) => one.getAttribute('aria-label')))).toContain(
    'full cost 11.13',
  );
  for (const mark of await marks.all()) {
    const said = (await mark.getAttribute('aria-label')) ?? '';
    expect(said).toMatch(/^[a-z].* \d+\.\d\d$/);
    const box = await mark.boundingBox();
    expect(box?.height, said).toBeGreaterThanOrEqual(44);
    await mark.tap();
    await bar.getByText(said, { exact: true }).waitFor();
  }
});
