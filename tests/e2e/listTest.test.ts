import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { kept, priced, section, unfold } from '@/tests/e2e/harness/docketPage';
import { looksRight } from '@/tests/e2e/harness/looksRight';
import { openPage, type PageOptions } from '@/tests/e2e/harness/openPage';

const passed = 'No total falls as the quantity rises, looked at from 1 to 2,000.';

/** The breaks the maker types, and what a piece costs from each. */
const own = [
  [1, '26'],
  [6, '23'],
  [12, '20'],
  [24, '18'],
  [48, '16.5'],
] as const;

/** The example sold as listed, at the maker's own prices of five breaks of their own, and one price for all sizes. */
async function withOwnPrices(options: PageOptions = {}): Promise<{ page: Page; prices: Locator }> {
  const page = await openPage(options);
  await priced(page);
  const prices = section(page, 'Prices');
  await unfold(prices, 'Another rule');
  await prices.getByRole('button', { name: 'One price for all sizes' }).click();
  await prices.getByLabel('Orders are priced').selectOption({ label: 'by quantity, as listed' });
  await unfold(prices, 'Your own prices');
  await prices.getByRole('button', { name: 'Type your own' }).click();
  await prices.getByText('They hold for this line alone.').waitFor();
  await withBreaks(prices);
  for (const [at, [from, price]] of own.entries()) {
    const next = own[at + 1]?.[0];
    const label = next === undefined ? `${from} pieces and up` : `${from} to ${next - 1} pieces`;
    await prices.getByRole('textbox', { name: label }).fill(price);
  }
  await kept(page);
  return { page, prices };
}

/** Types the breaks over those the sums had chosen: few enough first, then from the last, for each stays below its next. */
async function withBreaks(prices: Locator): Promise<void> {
  const fields = prices.getByRole('textbox', { name: /^Break \d+, from/ });
  const remove = prices.getByRole('button', { name: 'Remove break 2' });
  for (let count = await fields.count(); count > 1; count -= 1) {
    await remove.click();
    await expect.poll(() => fields.count()).toBe(count - 1);
  }
  for (const [at, [from]] of own.entries()) {
    if (at > 0) await prices.getByRole('button', { name: 'Add a break' }).click();
    const field = prices.getByRole('textbox', { name: `Break ${at + 1}, from` });
    await field.fill(`${from}`);
    await field.press('Tab');
    // The new list moves what is under it: nothing is pressed while it comes.
    if (at > 0)
      await prices
        .getByText(new RegExp(`^from ${from}\\b`))
        .first()
        .waitFor();
  }
}
const fallsAt12 = '11 pieces would cost more than 12: 253.00 against 240.00 USD.';

test.each([1280, 390])('own prices are tested, cured by a tap and taken back at %d px', async (width) => {
  const { page, prices } = await withOwnPrices({ width });
  await prices
    .getByText('22 to 23 pieces would cost more than 24: 440.00 and 460.00 against 432.00 USD.')
    .waitFor();
  await prices.getByText('44 and 48 pieces cost the same: a tie, and no fault.').waitFor();
  await looksRight(page, 'price-list');
  await prices.getByRole('button', { name: 'Cap orders at the next break' }).click();
  await prices.getByText(passed).waitFor();
  await unfold(prices, 'What an order pays');
  await expect
    .poll(() => prices.getByRole('row', { name: /^11 / }).textContent())
    .toMatch(/240\.00.*253\.00/);
  await prices.getByRole('button', { name: 'Take it back' }).click();
  await prices.getByText(fallsAt12).waitFor();
});

test('the rule beside the falls cures them in one step, which undo takes back', async () => {
  const { page, prices } = await withOwnPrices();
  await prices.getByText(fallsAt12).waitFor();
  // 11 × 23 = 253 against 12 × 20; 23 × 20 = 460 against 24 × 18; 47 × 18 = 846 against 48 × 16.50.
  const falls = prices.getByRole('table').filter({ hasText: 'by the rule' });
  for (const [pieces, now, held] of [
    ['11', '253.00', '240.00'],
    ['23', '460.00', '432.00'],
    ['47', '846.00', '792.00'],
  ] as const)
    await expect
      .poll(() => falls.getByRole('row', { name: new RegExp(`^${pieces} `) }).textContent())
      .toBe(`${pieces}${now}${held}`);
  await prices.getByRole('button', { name: 'Use the rule' }).click();
  await prices.getByText(passed).waitFor();
  await falls.waitFor({ state: 'detached' });
  await page.getByRole('button', { name: /^Undo/ }).click();
  await prices.getByText(fallsAt12).waitFor();
  await falls.waitFor();
});
