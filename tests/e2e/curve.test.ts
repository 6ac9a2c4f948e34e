import { readFile } from 'node:fs/promises';
import type { Locator, Page } from 'playwright-core';
import sharp from 'sharp';
import { expect, test } from 'vitest';
import { filled, kept, priceBarText, priced, section, type, unfold } from '@/tests/e2e/harness/docketPage';
import { looksRight } from '@/tests/e2e/harness/looksRight';
import { openPage, type PageOptions } from '@/tests/e2e/harness/openPage';

async function curveOf(options: PageOptions = {}): Promise<{ readonly page: Page; readonly curve: Locator }> {
  const page = await openPage(options);
  await priced(page);
  const curve = section(page, 'Batch');
  await curve.scrollIntoViewIfNeeded();
  await curve.locator('svg[data-chart]').waitFor();
  return { page, curve };
}

const atFlat20 = async (curve: Locator) => {
  await unfold(curve, 'Try a flat price');
  await type(curve.getByRole('textbox', { name: 'At a flat price instead' }), '20');
  await curve.getByText('at 20.00 USD a piece').waitFor();
};

const slider = (curve: Locator) => curve.getByRole('slider', { name: 'Pieces looked at, on the curve' });

test.each([1280, 390])('the curve shows the worked figures at a flat 20.00 at %d px', async (width) => {
  const { page, curve } = await curveOf({ width });
  await atFlat20(curve);
  await unfold(curve, 'Cost and price, or profit');
  await curve.getByText('It pays its way from 9 pieces.').waitFor();
  await curve.getByText('The knee is at 23:', { exact: false }).waitFor();
  await curve.getByText('pays its way from 9', { exact: true }).waitFor();
  const hold = slider(curve);
  // Margins of the worked example in percent.
  for (const [n, margin] of [
    [12, '17.5 %'],
    [24, '36.2 %'],
    [37, '42.8 %'],
    [72, '48.7 %'],
  ] as const) {
    await curve.getByRole('textbox', { name: 'Pieces looked at' }).fill(`${n}`);
    await expect.poll(() => hold.getAttribute('aria-valuetext')).toContain(`margin ${margin}`);
  }
  await curve.getByLabel('Laid over it').selectOption({ label: 'the job without Chest badge' });
  await curve.getByText('The job without Chest badge costs less at every batch', { exact: false }).waitFor();
  await looksRight(page, 'curve');
});

test('keys and pointer move the quantity; the job is made so large in one step, and back', async () => {
  const { page, curve } = await curveOf();
  // What comes later above the curve would move it away from under the pointer.
  await filled(page);
  const hold = slider(curve);
  await hold.focus();
  const at = () => hold.getAttribute('aria-valuenow');
  for (const [key, n] of [
    ['ArrowRight', 38],
    ['PageUp', 48],
    ['PageDown', 38],
    ['ArrowLeft', 37],
    ['End', 100],
    ['Home', 1],
  ] as const) {
    await page.keyboard.press(key);
    await expect.poll(at).toBe(`${n}`);
  }
  await curve.getByRole('button', { name: 'Back to 37' }).click();
  await expect.poll(at).toBe('37');
  await hold.scrollIntoViewIfNeeded();
  const box = await hold.boundingBox();
  if (box === null) throw new Error('the slider has no box');
  const xOf = (n: number) => box.x + (Math.log(n) / Math.log(100)) * box.width;
  await page.mouse.move(xOf(37), box.y + 100);
  await page.mouse.down();
  await page.mouse.move(xOf(50), box.y + 100, { steps: 4 });
  await page.mouse.up();
  await expect.poll(at).toBe('50');
  await curve.getByRole('button', { name: 'Make it 50' }).click();
  await kept(page);
  const job = section(page, 'The job');
  await expect.poll(() => job.textContent()).toContain('= 50');
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect.poll(() => job.textContent()).toContain('= 37');
  await expect.poll(() => priceBarText(page)).toContain('19.00');
});

test('the curve stands as a table, and is saved as CSV, SVG and PNG', async () => {
  const { page, curve } = await curveOf();
  await unfold(curve, 'As a table');
  await unfold(curve, 'Save the chart');
  const table = curve.getByRole('table', { name: /^Cost, price and margin/ });
  await table.getByRole('row', { name: /^37/ }).waitFor();
  expect(await table.getByRole('row', { name: /^38/ }).count()).toBe(0);
  await curve.getByRole('button', { name: 'Show every quantity' }).click();
  await table.getByRole('row', { name: /^38/ }).waitFor();
  const saved = async (kind: string) => {
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      curve.getByRole('button', { name: `Save as ${kind}` }).click(),
    ]);
    return readFile(await download.path());
  };
  const csv = (await saved('CSV')).toString('utf8');
  expect(csv.split('\r\n')).toHaveLength(102);
  // 411.79 of the worked example over 37 pieces; asked 711.50.
  expect(csv).toContain('Ramblers Club shirts,37,411.79,11.13,711.5,19.23,');
  const svg = (await saved('SVG')).toString('utf8');
  expect(svg).toContain('Ramblers Club shirts: Margin against batch size, at the asked prices.');
  expect(svg).not.toMatch(/var\(|<script|href=|class=/);
  const png = await sharp(await saved('PNG')).metadata();
  expect(png.format).toBe('png');
  expect(png.width).toBeGreaterThan(900);
});

test('bad prices and quantities get a sentence, and the last good curve stays', async () => {
  const { page, curve } = await curveOf();
  await atFlat20(curve);
  await unfold(curve, 'Cost and price, or profit');
  const flat = curve.getByRole('textbox', { name: 'At a flat price instead' });
  for (const [typed, sentence] of [
    ['0', 'it must be more than 0'],
    ['cheap', 'no part of a number'],
  ] as const) {
    await type(flat, typed);
    await page.keyboard.press('Tab');
    await curve.getByText(sentence, { exact: false }).waitFor();
  }
  // Curves are worked out in the order they are asked for: after this one no other is under way.
  await curve.getByLabel('Laid over it').selectOption({ label: 'the job without Chest badge' });
  await curve.getByText('The job without Chest badge costs less at every batch', { exact: false }).waitFor();
  expect(await curve.getByText('at 20.00 USD a piece').count()).toBe(1);
  await type(flat, '3');
  await curve.getByText('At this price no batch up to 100 pieces pays its way', { exact: false }).waitFor();
  await flat.fill('');
  await curve.getByText('at the asked prices').waitFor();
  await type(curve.getByRole('textbox', { name: 'Pieces looked at' }), '101');
  await page.keyboard.press('Tab');
  await curve.getByText('101 is too large: the most here is 100.', { exact: false }).waitFor();
  const job = section(page, 'The job');
  await job.getByRole('textbox', { name: 'Price of a shirt', exact: true }).fill('');
  await curve.getByText('at the suggested price', { exact: true }).waitFor();
  await expect.poll(() => curve.getByRole('radio', { name: 'margin' }).count()).toBe(1);
});
