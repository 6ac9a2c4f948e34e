import type { Page } from 'playwright-core';
import { test } from 'vitest';
import { axe } from '@/tests/e2e/harness/axe';
import { kept, priced, section, type, unfold } from '@/tests/e2e/harness/docketPage';
import { openPage } from '@/tests/e2e/harness/openPage';
import { shot } from '@/tests/e2e/harness/shot';
import { unfoldAll } from '@/tests/e2e/harness/unfoldAll';

/*
 * 37 shirts with a print of 4.25 × 3.25 in and one of 2.5 × 2 in on shared letter sheets, 1/8 in of border and 1/4 in
 * between. The first layout has eleven sheets, the one that is found by looking on has ten. By hand: with their gutters
 * 37 × (4.5 × 3.5 + 2.75 × 2.25) = 811.7 sq in, and inside the borders a sheet has 8.5 × 11 = 93.5 sq in: nine at least.
 */
const sides = { Width: ['4.25', '2.5'], Height: ['3.25', '2'] } as const;

async function shareSheets(page: Page): Promise<void> {
  await priced(page);
  const job = section(page, 'The job');
  await unfoldAll(page);
  for (const [side, inches] of Object.entries(sides)) {
    for (const [place, text] of inches.entries()) {
      const field = job.getByLabel(side, { exact: true }).nth(place);
      await type(field, text);
      await field.press('Tab');
    }
  }
  await job.getByLabel('Prints on a sheet').selectOption('together');
  await kept(page);
}

test('a job on shared sheets is priced at once; the sheet fewer that is found follows everywhere, after a reload and an undo too', async () => {
  const page = await openPage({ width: 1280 });
  await shareSheets(page);
  const sheets = section(page, 'Sheets');
  const found = sheets.getByRole('status').getByText('1 sheet fewer found; the price follows.');
  const tenSheets = async () => {
    await found.waitFor();
    await unfold(sheets, 'Sheets to print, 10 for the good pieces');
    await sheets.getByText(/^10 sheets for the good pieces/).waitFor();
    await sheets.getByRole('button', { name: 'Every sheet, 10 pages' }).waitFor();
    await sheets.getByRole('figure').first().waitFor();
  };
  await tenSheets();
  await shot(page, 'fewer-sheets');
  await axe(page);
  await page.reload();
  await priced(page);
  await tenSheets();
  // An edit that moves no print, and its undo, keep what was found.
  const price = section(page, 'The job').getByRole('textbox', { name: 'Price of a shirt', exact: true });
  await price.fill('21');
  await price.blur();
  await tenSheets();
  await page.getByRole('button', { name: /^Undo/ }).click();
  await tenSheets();
});
