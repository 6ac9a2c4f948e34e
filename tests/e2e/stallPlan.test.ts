import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { kept, section, unfold } from '@/tests/e2e/harness/docketPage';
import { looksRight, scrollsNowhere } from '@/tests/e2e/harness/looksRight';
import { openPage } from '@/tests/e2e/harness/openPage';

const head = (page: Page) => page.getByRole('region', { name: 'The plan in short' });
/** Figures of the worked fair hold to two hundredths. */
const profitNear = (page: Page, worked: number) =>
  expect
    .poll(async () => {
      const told = (await head(page).textContent()) ?? '';
      return Math.abs(Number(/^-?[\d.]+/.exec(told.trim())?.[0]) - worked) <= 0.02;
    })
    .toBe(true);

test.each([1280, 390])('the worked fair is planned, its advice taken and kept, at %d px', async (width) => {
  const page = await openPage({ path: '/stall', width });
  await page.getByRole('link', { name: 'Stall', exact: true }).waitFor();
  await page.getByRole('link', { name: 'Exampleton Spring Fair' }).click();
  await page.getByRole('heading', { level: 1, name: 'Exampleton Spring Fair' }).waitFor();
  await profitNear(page, 337.25);
  await page.getByText('15 fewer shirts, same profit when it is dry:').waitFor();
  await looksRight(page, `stall-plan-${width}`);

  const fern = page.getByRole('group', { name: 'Fern' });
  await fern.getByRole('button', { name: 'take 24 as advised for Fern' }).click();
  await fern.getByText('as advised').waitFor();
  const field = page.getByRole('group', { name: 'Otter' }).getByRole('textbox', { name: 'L', exact: true });
  await field.fill('9');
  await page.getByRole('button', { name: 'Take the 109' }).click();
  await profitNear(page, 360.68);
  await kept(page);
  await page.reload();
  await profitNear(page, 360.68);
  await page.getByText('81 shirts, 28 mugs').waitFor();
  expect(await field.inputValue()).toBe('6');
});

test('every field and fold of the plan is reached by keys', async () => {
  const page = await openPage({ path: '/stall/spring-fair' });
  const field = page.getByRole('group', { name: 'Fern' }).getByRole('textbox', { name: 'S', exact: true });
  await field.focus();
  await page.keyboard.press('Tab');
  await page.keyboard.type('5');
  await page.keyboard.press('Shift+Tab');
  await page.keyboard.press('Tab');
  expect(await page.evaluate(() => (document.activeElement as HTMLInputElement).value)).toBe('5');
  const fold = page.getByRole('button', { name: 'Table, cash and hours' });
  await fold.focus();
  await page.keyboard.press('Enter');
  const table = page.getByRole('textbox', { name: 'Pieces on table and rail' });
  await table.fill('100');
  // 132 less the 8 of Fern in M and with 5 in their place: 129.
  await page.getByText(/129 pieces are brought, and the table holds 100: 29 stay/).waitFor();
});

test.each([320, 390])('nothing of the plan or the calendar lies beside a screen of %d px', async (width) => {
  const page = await openPage({ path: '/stall/spring-fair', width });
  await profitNear(page, 337.25);
  await scrollsNowhere(page);
  await page.goto('/stall');
  await page.getByRole('button', { name: 'New stall day' }).click();
  await page.getByRole('textbox', { name: 'Name of the fair or market' }).fill('Harbour market');
  await scrollsNowhere(page);
  await page.getByRole('textbox', { name: 'Name of the fair or market' }).press('Enter');
  await page.getByRole('heading', { level: 1, name: 'Harbour market' }).waitFor();
  await page.getByText('Nothing is brought yet', { exact: false }).first().waitFor();
  await looksRight(page, `stall-new-${width}`);
});

test.each([320, 390])(
  'every room of the app is reached by links for a thumb on a screen of %d px',
  async (width) => {
    const page = await openPage({ path: '/stall', width });
    const main = page.getByRole('navigation', { name: 'Main' });
    const large = async (link: Locator, name: string) => {
      const box = await link.boundingBox();
      expect(box?.height, name).toBeGreaterThanOrEqual(44);
      expect(box?.width, name).toBeGreaterThanOrEqual(44);
    };
    for (const name of ['Jobs', 'Orders', 'Making', 'Stall'])
      await large(main.getByRole('link', { name, exact: true }), name);
    const more = main.getByRole('button', { name: 'More' });
    await large(more, 'More');
    await more.click();
    for (const name of ['Blanks', 'Price lists', 'Year', 'Workshop'])
      await large(main.getByRole('link', { name, exact: true }), name);
    await scrollsNowhere(page);
  },
);

test.each([1280, 390])(
  'weathers of small chance keep their whole names in the drawing, at %d px',
  async (width) => {
    const page = await openPage({ path: '/stall/spring-fair', width });
    await profitNear(page, 337.25);
    const weather = section(page, 'What the weather does');
    await unfold(weather, 'Chances of the weather');
    for (const [name, chance] of [
      ['dry', '95'],
      ['showers', '3'],
      ['wet', '2'],
    ] as const)
      await weather.getByRole('textbox', { name: `How likely ${name} is` }).fill(chance);
    const names = weather.locator('figure li strong');
    await expect
      .poll(() => weather.locator('figure li').allTextContents())
      .toEqual(['dry 95 %', 'showers 3 %', 'wet 2 %']);
    const told = await names.evaluateAll((all) =>
      all.map((name) => {
        const label = name.parentElement?.getBoundingClientRect();
        const row = name.closest('li')?.getBoundingClientRect();
        if (label === undefined || row === undefined) throw new Error('a name without a band');
        return {
          top: label.top,
          bottom: label.bottom,
          isWhole: label.top >= row.top - 1 && label.bottom <= row.bottom + 1,
        };
      }),
    );
    for (const [at, one] of told.entries()) {
      expect(one.isWhole).toBe(true);
      expect(one.top).toBeGreaterThanOrEqual((told[at - 1]?.bottom ?? one.top) - 1);
    }
  },
);
