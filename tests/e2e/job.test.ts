import { expect, test } from 'vitest';
import { axe } from '@/tests/e2e/harness/axe';
import { expectPriceBar, kept, priceBarText, priced, section, type } from '@/tests/e2e/harness/docketPage';
import { openPage } from '@/tests/e2e/harness/openPage';
import { shot } from '@/tests/e2e/harness/shot';

test.each([
  { width: 1280, scheme: 'light' },
  { width: 390, scheme: 'light' },
  { width: 1280, scheme: 'dark' },
  { width: 390, scheme: 'dark' },
] as const)(
  'a first visit at $width px ($scheme) finds the finished example, without a finding of axe',
  async (view) => {
    const page = await openPage(view);
    await priced(page);
    expect(await priceBarText(page)).toMatch(/19\.00.*margin 40\.5 %.*markup 68\.2 %.*56\.2\d/);
    expect(await section(page, 'Checks').getByRole('listitem').count()).toBeGreaterThan(5);
    await axe(page);
    await shot(page, `first-visit-${view.scheme}`);
    const overflow = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(overflow, 'the page scrolls sideways').toBeLessThanOrEqual(0);
  },
);

test('more pieces in a size move every figure at once', async () => {
  const page = await openPage();
  await priced(page);
  await type(section(page, 'The job').getByRole('textbox', { name: 'L', exact: true }), '23');
  await section(page, 'The job').getByText('= 49').waitFor();
  await expectPriceBar(page, /19\.00.*margin 4[3-9]/);
});

test('an edit shows at once, is undone and redone, and is there again after a reload', async () => {
  const page = await openPage();
  await priced(page);
  const price = section(page, 'The job').getByRole('textbox', { name: 'Price of a shirt', exact: true });
  await type(price, '21');
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

test('a stop withholds new prices, keeps the last good one in view, and goes by its button', async () => {
  const page = await openPage();
  await priced(page);
  const checks = section(page, 'Checks');
  const job = section(page, 'The job');
  await job.getByText('Packaging, up-charges, name').click();
  await type(job.getByRole('textbox', { name: 'Pieces the customer said in all' }), '38');
  await checks.getByText('the sizes add up to 37, the order says 38').waitFor();
  await expectPriceBar(page, /last good price/i);
  await shot(page, 'stop');
  await axe(page);
  await checks
    .getByRole('listitem')
    .filter({ hasText: 'the sizes add up to 37' })
    .getByRole('button')
    .last()
    .click();
  await expect.poll(() => priceBarText(page)).not.toMatch(/last good price/i);
  expect(await checks.getByText('the sizes add up to').count()).toBe(0);
});

test('a figure opens three levels down to what was typed', async () => {
  const page = await openPage();
  await priced(page);
  const cost = section(page, 'Cost sheet');
  await cost.getByRole('button', { name: 'Electricity, L: 0.01' }).click();
  const panel = cost
    .getByRole('group', { name: /Electricity/ })
    .or(cost.getByRole('region', { name: /Electricity/ }));
  await panel
    .first()
    .getByRole('button', { name: /^Electricity, nothing spoiled/ })
    .click();
  await cost
    .getByRole('button', { name: /^Holding the presses hot/ })
    .first()
    .click();
  await cost
    .getByRole('button', { name: /^Power of press/ })
    .first()
    .click();
  await cost
    .getByText(/1\.4 kW/)
    .first()
    .waitFor();
  await cost.getByText(/yours/).first().waitFor();
  await shot(page, 'traced');
  await axe(page);
});

test('an edit made without a network is priced, kept, and there when the network is back', async () => {
  const page = await openPage();
  await priced(page);
  await page.context().setOffline(true);
  await type(section(page, 'The job').getByRole('textbox', { name: 'Price of a shirt', exact: true }), '20');
  await expectPriceBar(page, /20\.00.*margin 4\d/);
  await kept(page);
  await page.context().setOffline(false);
  await page.reload();
  await priced(page);
  await expectPriceBar(page, /20\.00/);
});

test('two tabs at one job lose no edit of either', async () => {
  const first = await openPage();
  await priced(first);
  const second = await openPage({ beside: first });
  await priced(second);
  await type(section(first, 'The job').getByRole('textbox', { name: 'Price of a shirt', exact: true }), '22');
  await type(
    section(second, 'The job').getByRole('textbox', {
      name: 'Most this crowd pays for a shirt',
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
        section(page, 'The job')
          .getByRole('textbox', { name: 'Most this crowd pays for a shirt', exact: true })
          .inputValue(),
      )
      .toMatch(/^25/);
  }
});

test.each([
  ['1,5', /1\.5/],
  ['-3', /./],
  ['abc', /./],
  ['1e5', /./],
])('“%s” typed as a price stays as typed, is told of, and changes no figure', async (text, telling) => {
  const page = await openPage();
  await priced(page);
  const price = section(page, 'The job').getByRole('textbox', { name: 'Price of a shirt', exact: true });
  await price.fill(text);
  await price.blur();
  expect(await price.inputValue()).toBe(text);
  expect(await price.getAttribute('aria-invalid')).toBe('true');
  const issue = (await price.getAttribute('aria-describedby'))
    ?.split(' ')
    .find((id) => id.endsWith('-issue'));
  expect(await page.locator(`[id="${issue}"]`).textContent()).toMatch(telling);
  await expectPriceBar(page, /19\.00.*margin 40\.5 %/);
});

test('the flag of the price ruler moves by keys, and the price with it', async () => {
  const page = await openPage();
  await priced(page);
  const flag = page.getByRole('slider').first();
  await flag.focus();
  await page.keyboard.press('ArrowRight');
  await expectPriceBar(page, /19\.50/);
  expect(await flag.getAttribute('aria-valuetext')).toMatch(/19\.50.*margin/);
});

test.each([1280, 390])('text at twice its size scrolls nothing sideways at %d px', async (width) => {
  const page = await openPage({ width });
  for (const path of ['/', '/workshop', '/price-lists/club-prices']) {
    await page.goto(path);
    await page.getByRole('heading', { level: 1 }).waitFor();
    if (path === '/') {
      await priced(page);
      // The last section of figures is the last to be worked out.
      await section(page, 'Ways of selling').getByRole('listitem').first().waitFor({ timeout: 20_000 });
    }
    await page.evaluate(() => document.documentElement.style.setProperty('font-size', '200%'));
    const overflow = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(overflow, path).toBeLessThanOrEqual(0);
  }
});
