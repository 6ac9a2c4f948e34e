import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { filled, priced, section, unfold } from '@/tests/e2e/harness/docketPage';
import { openPage } from '@/tests/e2e/harness/openPage';
import { unfoldAll } from '@/tests/e2e/harness/unfoldAll';

/** Of each table that is seen and holds buttons: how many, and how many of them the Tab key stops at. */
const tablesOf = (page: Page) =>
  page.locator('main table').evaluateAll((tables) =>
    tables.flatMap((table) => {
      const buttons = [...table.querySelectorAll('button')].filter((one) => one.checkVisibility());
      const name = table.querySelector('caption')?.textContent ?? table.closest('section')?.id ?? '';
      const stops = buttons.filter((one) => one.tabIndex >= 0).length;
      return buttons.length > 1 ? [{ name, buttons: buttons.length, stops }] : [];
    }),
  );

test.each([1280, 390])(
  'each table of figures on the docket is one stop of the Tab key at %d px',
  async (width) => {
    const page = await openPage({ width });
    await filled(page);
    await unfoldAll(page);
    // What the job costs, what one piece comes to, and every line by size.
    await expect.poll(async () => (await tablesOf(page)).length).toBeGreaterThanOrEqual(3);
    const tables = await tablesOf(page);
    expect(tables.filter(({ stops }) => stops !== 1)).toEqual([]);
    expect(tables.reduce((sum, { buttons }) => sum + buttons, 0)).toBeGreaterThan(40);
  },
);

test('arrow keys go through a table, one Tab leaves it, and coming back finds the figure left', async () => {
  const page = await openPage();
  await priced(page);
  const cost = section(page, 'Cost');
  await unfold(cost, 'Every line by size');
  const table = cost.getByRole('table').filter({ hasText: 'Electricity' });
  const first = table.getByRole('button').first();
  await first.focus();
  // What a figure is said as, with its row and column: figures side by side may be equal.
  const name = () => page.evaluate(() => document.activeElement?.getAttribute('aria-label') ?? '');
  const isInside = () => table.evaluate((element) => element.contains(document.activeElement));
  const start = await name();
  await page.keyboard.press('ArrowRight');
  await expect.poll(name).not.toBe(start);
  const right = await name();
  await page.keyboard.press('ArrowDown');
  await expect.poll(name).not.toBe(right);
  const below = await name();
  // The same column: a figure of the same size, of another line.
  const size = (said: string) => /, ([^,:]+): /.exec(said)?.[1];
  expect(size(right)).toBeDefined();
  expect(size(below)).toBe(size(right));
  await page.keyboard.press('ArrowUp');
  await expect.poll(name).toBe(right);
  await page.keyboard.press('Home');
  await expect.poll(name).toBe(start);
  await page.keyboard.press('ArrowDown');
  await expect.poll(name).not.toBe(start);
  const left = await name();
  await page.keyboard.press('Tab');
  await expect.poll(isInside).toBe(false);
  await page.keyboard.press('Shift+Tab');
  await expect.poll(name).toBe(left);
});
