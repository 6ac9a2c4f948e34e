import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { takeIn } from '@/tests/e2e/harness/copyFiles';
import { section } from '@/tests/e2e/harness/docketPage';
import { keyboard } from '@/tests/e2e/harness/hands';
import { QUIET } from '@/tests/e2e/harness/keptStore';
import { openPage } from '@/tests/e2e/harness/openPage';
import { atThePress, pressAll, pressedOn, pressKept, pressKey } from '@/tests/e2e/harness/pressShelf';

/* A run by the keyboard alone; whoever works by it is never put back to the top of the page. */

const { press, type, choose } = keyboard;

/** Whatever held the focus is gone, and a heading near it has it. */
const expectAt = (page: Page, heading: string | RegExp) =>
  expect.poll(() => page.evaluate(() => document.activeElement?.textContent?.trim() ?? '')).toMatch(heading);

test('the press is worked by the keyboard alone', async () => {
  const page = await atThePress(1280);
  await press(pressKey(page, /heat 10 s$/));
  await press(pressKey(page, /press 55 s$/));
  await press(pressKey(page, /^Good/));
  for (let piece = 0; piece < 2; piece += 1) {
    await press(pressKey(page, /^Scrap/));
    await expectAt(page, /^What is wrong with it$/);
    await press(pressKey(page, /^Ghost$/));
    await expectAt(page, piece === 0 ? /^The (one just|next one) lifted$/ : /^Ghost, twice running: stop$/);
  }
  await press(pressKey(page, /^Stop after this$/));
  await expectAt(page, /^Stopped: ghost$/);
  await press(pressKey(page, /^Go on$/));
  // What the last twenty say comes next.
  await expectAt(page, /^Look closely at the next ones$/);
  await press(pressKey(page, /^Undo/));
  await press(pressKey(page, /^L.*press this size next$/));
  await press(pressKey(page, /^More$/));
  const more = page.getByRole('dialog', { name: 'More' });
  await press(more.getByRole('button', { name: /^Badge/ }));
  await expect
    .poll(() => pressKey(page, /^More$/).evaluate((one) => one === document.activeElement))
    .toBe(true);
  await press(pressKey(page, /^More$/));
  await press(more.getByRole('button', { name: /^Back/ }));
  await pressKept(page);
  await page.goto(QUIET);
  expect(await pressedOn(page)).toEqual(['good M', 'scrap M ghost']);
  // Eight of M are left when this device comes back: the last verdict leads on.
  await pressAll(page, 'back', 2);
  await press(pressKey(page, /^Good/));
  await expectAt(page, /^Back is done$/);
  await press(pressKey(page, /^Go on with Badge/));
  await expectAt(page, /^The next one lifted$/);
});

test('after the run is worked by the keyboard alone', async () => {
  const page = await openPage({ path: '/workshop#copies' });
  await takeIn(page, 'public/examples/club-run.json');
  await page.goto('/making/club-run/after');
  const lessons = section(page, 'What runs teach');
  await press(lessons.getByRole('button', { name: /^Take it over: Price of White shirt/ }));
  await expectAt(page, /^What runs teach$/);
  await press(lessons.getByRole('button', { name: /^Take back: Price of White shirt/ }));
  await expectAt(page, /^What runs teach$/);
  const took = section(page, 'What it took');
  await press(took.getByRole('button', { name: 'Open the run again' }));
  await expectAt(page, /^What it took$/);
  await press(took.getByRole('button', { name: 'Start the clock' }));
  await expectAt(page, /^Stop and note it$/);
  await press(took.getByRole('button', { name: 'Throw it away' }));
  await expectAt(page, /^What it took$/);
  await press(took.getByRole('button', { name: 'Time worked' }));
  const form = took.getByRole('form', { name: 'Time worked' });
  await choose(form.getByRole('combobox'), 'Setting up');
  await type(form.getByRole('textbox', { name: /^Time/ }), '12');
  await press(form.getByRole('button', { name: 'Note the time' }));
  await press(took.getByRole('button', { name: 'Close the run' }));
  await took.getByRole('button', { name: 'Open the run again' }).waitFor();
  await expectAt(page, /^What it took$/);
  await choose(page.getByRole('row', { name: /^Your time/ }).getByRole('combobox'), 'Interruptions');
});
