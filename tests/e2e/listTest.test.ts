import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { kept, priced, section, unfold } from '@/tests/e2e/harness/docketPage';
import { looksRight } from '@/tests/e2e/harness/looksRight';
import { openPage, type PageOptions } from '@/tests/e2e/harness/openPage';

const passed = 'No total falls as the quantity rises, looked at from 1 to 2,000.';

/** The example with the maker's own prices of five breaks, and one price for all sizes. */
async function withOwnPrices(options: PageOptions = {}): Promise<{ page: Page; prices: Locator }> {
  const page = await openPage(options);
  await priced(page);
  const prices = section(page, 'Prices');
  await unfold(prices, 'Another rule');
  await prices.getByRole('button', { name: 'One price for all sizes' }).click();
  await unfold(prices, 'Your own prices');
  for (const [label, price] of [
    ['1 to 5 pieces', '26'],
    ['6 to 11 pieces', '23'],
    ['12 to 23 pieces', '20'],
    ['24 to 47 pieces', '18'],
    ['48 pieces and up', '16.5'],
  ] as const)
    await prices.getByRole('textbox', { name: label }).fill(price);
  await kept(page);
  return { page, prices };
}

test.each([1280, 390])('own prices are tested, cured by a tap and taken back at %d px', async (width) => {
  const { page, prices } = await withOwnPrices({ width });
  await prices
    .getByText('22 to 23 pieces would cost more than 24: 440.00 and 460.00 against 432.00 USD.')
    .waitFor();
  await prices.getByText('44 and 48 pieces cost the same: a tie, and no fault.').waitFor();
  await looksRight(page, 'price-list');
  await prices.getByRole('button', { name: 'Cap orders at the next break' }).click();
  await prices.getByText(passed).waitFor();
  expect(await prices.getByRole('row', { name: /^11 / }).textContent()).toMatch(/240\.00.*253\.00/);
  await prices.getByRole('button', { name: 'Take it back' }).click();
  await prices.getByText('11 pieces would cost more than 12: 253.00 against 240.00 USD.').waitFor();
});

test('moving the breaks changes workshop and job in one step, which undo takes back', async () => {
  const page = await openPage();
  await priced(page);
  const prices = section(page, 'Prices');
  await prices.getByRole('button', { name: 'Move the breaks' }).click();
  await prices.getByText(passed).waitFor();
  // 144.50 ÷ (144.50 − 34.50) = 1.3 takes the first break; 34.50 ÷ 11 = 3.1, 23.50 ÷ 5.50 = 4.3, 18 ÷ 2.50 = 7.2.
  await prices.getByRole('columnheader', { name: '7 and up' }).waitFor();
  await page.getByRole('button', { name: /^Undo/ }).click();
  await prices.getByRole('columnheader', { name: '24 to 47' }).waitFor();
});
