import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { axe } from '@/tests/e2e/harness/axe';
import { expectPriceBar, kept, priced, section, type } from '@/tests/e2e/harness/docketPage';
import { openPage } from '@/tests/e2e/harness/openPage';
import { shot } from '@/tests/e2e/harness/shot';

const PATIENCE_MS = 20_000;

async function scrollsNowhere(page: Page): Promise<void> {
  const overflow = await page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  );
  expect(overflow, 'the page scrolls sideways').toBeLessThanOrEqual(0);
}

test.each([
  { width: 1280, scheme: 'light' },
  { width: 390, scheme: 'dark' },
] as const)('a lever is tried, keeps its promise and is taken back at $width px', async (view) => {
  const page = await openPage(view);
  await priced(page);
  const levers = section(page, 'What would raise it');
  const row = levers.getByRole('listitem').filter({ hasText: 'Ask for 3 pieces more, 40 in all' });
  await row.getByText('+31.21 USD profit in all').waitFor({ timeout: PATIENCE_MS });
  await row.getByRole('button', { name: 'Try it' }).click();
  // 40.5 % and the 1.05 points that were promised.
  await expectPriceBar(page, /margin 41\.6 %/);
  await levers.getByRole('button', { name: 'Take it back' }).click();
  await expectPriceBar(page, /margin 40\.5 %/);
  await shot(page, `levers-${view.scheme}`);
  await scrollsNowhere(page);
});

test('the sums are asked the other way round, and a margin nobody can reach is told', async () => {
  const page = await openPage();
  await priced(page);
  const levers = section(page, 'What would raise it');
  await levers.getByText(/16\.27 USD a piece, 602\.05 USD for all/).waitFor({ timeout: PATIENCE_MS });
  await type(levers.getByRole('textbox', { name: 'Margin' }), '99');
  // Half the money comes by card: 1.5515 % of fees stand beside it.
  await levers
    .getByText('A margin of 99 % and fees of 1.6 % take the whole price: no price is high enough.', {
      exact: false,
    })
    .waitFor({ timeout: PATIENCE_MS });
  await expectPriceBar(page, /19\.00/);
});

test.each([
  { width: 1280, scheme: 'light' },
  { width: 390, scheme: 'dark' },
] as const)('charges and ways of selling stand beside the price at $width px', async (view) => {
  const page = await openPage(view);
  await priced(page);
  const charges = section(page, 'Charges around the piece');
  const delivery = charges.locator('div').filter({ has: page.getByText('Delivery', { exact: true }) });
  // 30 minutes at 22.20 an hour and 12 miles at 0.60 are 18.30; at 30 % and fees of 1.5515 % 26.74.
  await delivery.last().getByText('27.00').waitFor({ timeout: PATIENCE_MS });
  const ways = section(page, 'Ways of selling');
  const wholesale = ways.getByRole('listitem').filter({ hasText: 'not in your workshop yet' }).first();
  await wholesale.waitFor({ timeout: PATIENCE_MS });
  // Half of 711.50, the customary discount of wholesale.
  await wholesale.getByText('355.75 USD').first().waitFor();
  await ways.getByText('761.31 USD').waitFor();
  if (view.width === 1280) await axe(page);
  await shot(page, `selling-${view.scheme}`);
  await scrollsNowhere(page);
  await wholesale.getByRole('button', { name: 'Add wholesale to the workshop' }).click();
  await kept(page);
  await page.reload();
  await priced(page);
  const added = section(page, 'Ways of selling').getByRole('listitem').filter({ hasText: '355.75 USD' });
  await added.getByRole('button').waitFor({ state: 'detached', timeout: PATIENCE_MS });
});

test('a refill is noted and kept over a reload, and none that cannot be read', async () => {
  const page = await openPage({ path: '/workshop', width: 390 });
  const ink = page.locator('#ink');
  await ink.getByRole('button', { name: /^Note a refill/ }).click({ timeout: PATIENCE_MS });
  await ink.getByRole('textbox', { name: 'Poured in, all colours' }).fill('many');
  // What cannot be read stays as it was typed, and nothing can be noted.
  expect(await ink.getByRole('button', { name: 'Note the refill' }).getAttribute('aria-disabled')).toBe(
    'true',
  );
  expect(await ink.getByRole('textbox', { name: 'Poured in, all colours' }).inputValue()).toBe('many');
  await ink.getByRole('textbox', { name: 'Poured in, all colours' }).fill('62.5');
  await ink.getByRole('button', { name: 'Note the refill' }).click();
  await ink.getByText('62.5 mL').first().waitFor({ timeout: PATIENCE_MS });
  await kept(page);
  await scrollsNowhere(page);
  await page.reload();
  await page.locator('#ink').getByText('62.5 mL').first().waitFor({ timeout: PATIENCE_MS });
});
