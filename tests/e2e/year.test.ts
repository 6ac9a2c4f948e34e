import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { springFairTaps } from '@/lib/examples/springFairCount';
import { cellsOf } from '@/lib/names/cells';
import { QUIET } from '@/tests/e2e/harness/keptStore';
import { looksRight } from '@/tests/e2e/harness/looksRight';
import { openPage } from '@/tests/e2e/harness/openPage';
import { EVENING, layPlan, layTaps } from '@/tests/e2e/harness/stallShelf';
import { unfoldAll } from '@/tests/e2e/harness/unfoldAll';

/** A device on which the worked fair was closed with all its cash there, and the stall and some hours are noted. */
async function year(width: number): Promise<Page> {
  const page = await openPage({ width, path: '/workshop' });
  await page.getByRole('heading', { level: 1 }).waitFor();
  await page.goto(QUIET);
  await layPlan(page);
  await layTaps(
    page,
    springFairTaps().map(({ tap }) => tap),
  );
  await page.goto(EVENING);
  await page.getByRole('textbox', { name: /^All that is in the tin/ }).fill('530');
  await page.getByRole('radio', { name: 'Wrong change' }).check();
  await page.getByRole('button', { name: 'All is as it should be' }).click();
  await page.getByRole('radio', { name: 'Go again' }).check();
  await page.getByRole('button', { name: 'Close the day' }).click();
  await page.getByRole('button', { name: 'Close it again' }).waitFor();
  await page.goto('/year');
  await page.getByRole('button', { name: 'Money spent' }).click();
  await page.getByRole('textbox', { name: /^How much/ }).fill('85');
  await page.getByRole('combobox', { name: 'On what' }).selectOption('Stall');
  await page.getByRole('button', { name: 'Note it' }).click();
  await page.getByRole('button', { name: 'Hours worked' }).click();
  await page.getByRole('textbox', { name: /^How long/ }).fill('17');
  return page;
}

test.each([1280, 390, 320])(
  'the year looks right with a fair, an expense and hours, at %d px',
  async (width) => {
    const page = await year(width);
    await looksRight(page, 'year-hours');
    await page.getByRole('button', { name: 'Note it all the same' }).click();
    await page.getByText(/reckoned .* more for stall/).waitFor();
    expect(await unfoldAll(page)).toBeGreaterThan(0);
    await page.getByRole('link', { name: 'Exampleton Spring Fair' }).waitFor();
    await looksRight(page, 'year');
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save for the books, CSV' }).click(),
    ]);
    const { rows } = cellsOf(readFileSync(await download.path(), 'utf8'), ',');
    // The takings, fees and tin of the fair, its hours at the stall and the bench, the expense and the hours.
    const kinds = rows.slice(1).map(({ cells }) => cells[1]);
    expect(kinds.toSorted()).toEqual([
      ...['Fee kept back', 'Hours', 'Hours', 'Hours, office and books'],
      ...['Stall', 'Stall day', 'Tin over or short, coins rounded'],
    ]);
  },
);
