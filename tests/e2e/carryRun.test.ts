import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { bringIn, type FileToBringIn, savedFile, take } from '@/tests/e2e/harness/copyFiles';
import { kept } from '@/tests/e2e/harness/docketPage';
import { keysOn, QUIET } from '@/tests/e2e/harness/keptStore';
import { looksRight } from '@/tests/e2e/harness/looksRight';
import { openPage } from '@/tests/e2e/harness/openPage';
import { pressedOn } from '@/tests/e2e/harness/pressShelf';

/** A run of the example’s job, planned and begun on this device. */
async function begun(page: Page): Promise<string> {
  await page.getByRole('button', { name: 'New run' }).click();
  await page.getByRole('checkbox', { name: 'Ramblers Club shirts' }).check();
  await page.getByRole('button', { name: 'Plan it' }).click();
  await page.getByRole('button', { name: 'Begin', exact: true }).click();
  await page.getByRole('link', { name: 'To the press', exact: true }).first().waitFor();
  await kept(page);
  return new URL(page.url()).pathname;
}

async function carried(page: Page, run: string): Promise<FileToBringIn> {
  await page.goto(run);
  const file = await savedFile(page, page.getByRole('button', { name: 'Take it to another device' }));
  await page.getByText(/^Saved as /).waitFor();
  return file;
}

/** Brings a file in as it is offered, and goes on to the press by the way that is offered. */
async function taken(page: Page, file: FileToBringIn, headline: string | RegExp): Promise<void> {
  await page.goto('/workshop#copies');
  await bringIn(page, file);
  await page.getByRole('heading', { name: headline }).waitFor();
  await take(page).click();
  await expect.poll(() => take(page).count()).toBe(0);
  await kept(page);
}

async function press(page: Page, verdicts: readonly ('good' | 'scrap')[]): Promise<void> {
  for (const verdict of verdicts) {
    const key = page
      .locator('[data-press]')
      .getByRole('button', { name: verdict === 'good' ? /^Good/ : /^Scrap/ });
    await key.click();
    if (verdict === 'scrap')
      await page
        .locator('[data-press]')
        .getByRole('button', { name: /^Ghost$/ })
        .click();
    await page.getByText(/^no signal needed · kept/).waitFor();
  }
}

test('a run goes to the phone at the press and comes back with its presses, and those of both devices count once', async () => {
  const laptop = await openPage({ path: '/making' });
  const run = await begun(laptop);
  const there = await carried(laptop, run);
  const phone = await openPage({ path: '/workshop#copies', width: 390 });
  await taken(phone, there, 'would come in');
  await looksRight(phone, 'carried-run');
  await phone.getByRole('link', { name: /^To the press with / }).click();
  await press(phone, ['good', 'good', 'scrap']);
  // Both devices press at the same run.
  await laptop.goto(`${run}/press`);
  await press(laptop, ['good', 'good']);
  const back = await carried(phone, run);
  await taken(laptop, back, /pressed pieces/);
  await laptop.goto(`${run}/press`);
  await laptop.getByText(/^4 so far of/).waitFor();
  await laptop.getByText(/^1 so far/).waitFor();
  const once = await keysOn(laptop, ['entries', 'papers']);
  await laptop.goto('/workshop#copies');
  await bringIn(laptop, back);
  await laptop.getByRole('heading', { name: 'is the same here already' }).waitFor();
  expect(await take(laptop).count()).toBe(0);
  expect(await keysOn(laptop, ['entries', 'papers'])).toEqual(once);
  await laptop.goto(QUIET);
  expect(await pressedOn(laptop)).toHaveLength(5);
});
