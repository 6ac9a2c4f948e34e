import { mkdtemp, open, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, onTestFinished, test } from 'vitest';
import { kept, section, type } from './harness/docketPage';
import { pointer } from './harness/hands';
import { QUIET } from './harness/keptStore';
import { looksRight } from './harness/looksRight';
import { openPage } from './harness/openPage';
import { issue, note } from './harness/orderRoom';
import { takePace, watchPace } from './harness/pace';

/* What goes wrong with an order, or is done too early. The worked quote: 761.31, deposit 380.66. */

const ORDER = '/orders/club-enquiry';

const waits = (page: Page) => section(page, 'What it waits for');
const present = (page: Page) =>
  page.getByRole('list', { name: 'How far it is' }).locator('[aria-current="step"]');

/** The order of the example, with its quote out and accepted. */
async function accepted(): Promise<Page> {
  const page = await openPage({ path: ORDER });
  await page.getByRole('button', { name: 'Give it one' }).click();
  await issue(page, pointer, 'Quote', 'quote');
  await note(page, pointer, /^Accepted: /);
  await present(page).filter({ hasText: 'Approval and deposit' }).waitFor();
  return page;
}

test('blanks cannot be ordered before deposit and approval, but for a reason that stays told', async () => {
  const page = await accepted();
  const locked = waits(page).getByRole('button', { name: 'Blanks ordered: Order the blanks' });
  await expect.poll(() => locked.getAttribute('aria-disabled')).toBe('true');
  await locked.click({ force: true });
  expect(await waits(page).getByRole('form').count()).toBe(0);

  // Out of turn it is kept, counts for nothing, and is told with what is missing.
  await waits(page).locator('summary', { hasText: 'Something else happened' }).click();
  await note(page, pointer, /^Blanks ordered$/, async (form) => {
    await form.getByText('does not count until the deposit and the approved proof are here').waitFor();
  });
  await waits(page)
    .getByText(/^“Blanks ordered”, noted for .* does not count yet/)
    .waitFor();
  expect(await present(page).textContent()).toContain('Approval and deposit');
  await waits(page).getByRole('button', { name: 'Take back: Blanks ordered' }).click();
  await expect
    .poll(() =>
      waits(page)
        .getByText(/does not count yet/)
        .count(),
    )
    .toBe(0);

  await waits(page).getByRole('button', { name: 'Do it even so: Order the blanks' }).click();
  const why = waits(page).getByRole('form', { name: 'Go on without the deposit and the approved proof' });
  await why.getByRole('textbox', { name: /^Why you go on/ }).fill('no');
  await why.getByRole('button', { name: 'Note it' }).click({ force: true });
  await why.getByRole('textbox', { name: /^Why you go on/ }).fill('Known club, the event is near');
  await why.getByRole('button', { name: 'Note it' }).click();
  await waits(page).getByText('Gone on without the deposit on Nov 25, 2026.').waitFor();
  await kept(page);
  await page.reload();
  for (const gate of ['the deposit', 'the approved proof'])
    await waits(page).getByText(`Gone on without ${gate} on Nov 25, 2026.`).waitFor();
  await expect.poll(() => waits(page).getByText('Because: Known club, the event is near').count()).toBe(2);
  await note(page, pointer, /^Blanks ordered: /);
  await present(page).filter({ hasText: 'Making' }).waitFor();
  await section(page, 'What happened').getByRole('button').first().click();
  const told = section(page, 'What happened').getByRole('listitem');
  await expect.poll(() => told.filter({ hasText: 'Known club, the event is near' }).count()).toBe(2);
  await looksRight(page, 'order-overridden');
});

test('more than is owed is told before it is noted, kept as it came, and told in the room and on the board', async () => {
  const page = await accepted();
  await note(page, pointer, /^It came: Deposit/, async (form) => {
    const amount = form.getByRole('textbox', { name: 'How much' });
    await amount.fill('12.345');
    await form.locator('[aria-invalid="true"]').waitFor();
    await amount.fill('800');
    // 800.00 − 761.31.
    await form.getByText('38.69 USD more than is owed. It is kept as you say').waitFor();
  });
  await section(page, 'Money').getByText('38.69 USD too much came').waitFor();
  await kept(page);
  await page.goto('/orders');
  const row = page
    .getByRole('listitem')
    .filter({ hasText: 'Ramblers Club shirts' })
    .filter({ hasText: '38.69 too much' });
  await row.first().waitFor();
});

test('a quote that goes out in one tab while its deposit is changed in another loses neither, and each says what is', async () => {
  const one = await openPage({ path: ORDER });
  await one.getByRole('button', { name: 'Give it one' }).click();
  await kept(one);
  const other = await openPage({ beside: one, path: ORDER });
  await one.locator('summary', { hasText: 'What the quote says' }).click();
  const deposit = one.getByRole('textbox', { name: 'Deposit' });
  const answer = (page: Page, words: string) => page.getByRole('tabpanel').getByText(words).first();

  // 761.31 × 30 % = 228.393.
  await type(deposit, '30');
  await deposit.blur();
  await answer(other, 'deposit 228.39').waitFor();
  expect(await issue(other, pointer, 'Quote', 'quote')).toContain('228.39');
  await answer(one, 'Version 1 says just this').waitFor();

  // At the same moment: whichever was first, the paper says what stood there, and the change is not lost.
  const typed = async () => {
    // At once: between two letters a pause would keep 4 %, as it should.
    await deposit.fill('40');
    await deposit.blur();
  };
  const [file] = await Promise.all([issue(other, pointer, 'Quote', 'quote'), typed()]);
  // 761.31 × 40 % = 304.524.
  await answer(other, 'deposit 304.52').waitFor();
  const isNew = file.includes('304.52');
  expect(isNew || file.includes('228.39'), file).toBe(true);
  for (const page of [one, other]) {
    await kept(page);
    await page.reload();
    await answer(page, 'deposit 304.52').waitFor();
    const out = page.getByRole('region', { name: 'What went out: quote' }).getByRole('listitem');
    await expect.poll(() => out.count()).toBe(2);
    await expect.poll(() => page.getByText(/^Version 2 says just this/).count()).toBe(isNew ? 1 : 0);
  }
});

test('a file of 300 MB is refused before anything of it is read, and the next one is taken', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'pressminute-'));
  onTestFinished(() => rm(folder, { recursive: true, force: true }));
  const film = join(folder, 'film.mov');
  const file = await open(film, 'w');
  // A hole: it takes no room.
  await file.truncate(300_000_000);
  await file.close();
  const page = await openPage({ path: ORDER });
  const files = section(page, 'Files');
  await files.getByRole('button', { name: /^Files/ }).click();
  // Papers are made and read meanwhile, so reads are told apart by the file.
  await page.evaluate(() => {
    const reads: string[] = [];
    Reflect.set(window, 'filesRead', reads);
    for (const name of ['slice', 'arrayBuffer', 'text', 'stream'] as const) {
      const own = Blob.prototype[name];
      Reflect.set(Blob.prototype, name, function (this: Blob, ...given: never[]) {
        if (this instanceof File) reads.push(this.name);
        return Reflect.apply(own, this, given);
      });
    }
  });
  const filesRead = () => page.evaluate(() => Reflect.get(window, 'filesRead') as readonly string[]);
  await files.getByLabel('File to keep').setInputFiles(film);
  await files.getByText('“film.mov” has 300 MB; a file here may have 100 MB.').waitFor();
  expect(await filesRead()).not.toContain('film.mov');
  const letter = {
    name: 'letter.txt',
    mimeType: 'text/plain',
    buffer: Buffer.from('The crest may be printed.'),
  };
  await files.getByLabel('File to keep').setInputFiles(letter);
  // For a moment its row stands beside the word that it is being kept.
  await files.getByRole('listitem').filter({ hasText: 'letter.txt' }).waitFor();
  expect(await filesRead()).toContain('letter.txt');
  await kept(page);
  await page.reload();
  await files.getByText('One file').waitFor();
});

test('of 500 pasted names the three with a fault are told by their lines; what is right is taken, and there after a reload', async () => {
  const page = await openPage({ path: QUIET });
  await watchPace(page);
  await page.goto(ORDER);
  const names = section(page, 'Sizes and names');
  await names.getByRole('button', { name: /^Sizes and names/ }).click();
  await names.getByRole('button', { name: 'Paste or read names' }).click();
  const sizes = ['S', 'M', 'L', 'XL', '2XL'];
  const rows = Array.from({ length: 500 }, (_, at) => `Walker ${at + 1}\t${sizes[at % sizes.length]}`);
  rows[99] = 'Walker 100\tQQ';
  rows[199] = 'Walker 200\t';
  rows[299] = '\tM';
  await names.getByRole('textbox', { name: 'Names, as you got them' }).fill(rows.join('\n'));
  await takePace(page);
  await names.getByRole('button', { name: 'Look at them' }).click();
  const read = names.getByText(/^500 rows read/);
  await read.waitFor();
  await expect.poll(() => read.locator('..').textContent()).toContain('3 to look at');
  const faults = names.getByRole('list', { name: 'Rows to look at' });
  await expect
    .poll(() => faults.locator('> li').evaluateAll((all) => all.map((one) => one.getAttribute('aria-label'))))
    .toEqual(['Line 100', 'Line 200', 'Line 300']);
  await faults.getByText('The blank has no size “QQ”.').waitFor();
  await faults.getByText('No size.').waitFor();
  await faults.getByText('No name.').waitFor();
  const looking = (await takePace(page)).longTasks.slice(0, 5);
  await names.getByRole('button', { name: 'Take 500 names in' }).click();
  await names.getByText('500 names are in.').waitFor();
  const taking = (await takePace(page)).longTasks.slice(0, 5);
  process.stdout.write(
    `500 names: tasks over 50 ms while they are read [${looking}], taken in [${taking}]\n`,
  );
  await kept(page);
  await page.reload();
  // About a hundred of each size are named where a few of each are ordered, and nobody wears the one 3XL.
  await expect.poll(() => names.textContent()).toMatch(/500 names, 6 sizes otherwise than ordered/);
});

test('with a clock a year behind the order and the board say so, and what is noted stands after what was', async () => {
  const page = await openPage({ path: ORDER });
  await page.getByRole('button', { name: 'Give it one' }).click();
  await issue(page, pointer, 'Quote', 'quote');
  await kept(page);
  const behind = await openPage({ beside: page, path: QUIET });
  await page.close();
  // A year back, on top of the day all tests have.
  await behind.addInitScript((backMs) => {
    globalThis.Date = new Proxy(Date, {
      construct: (date, given, as) =>
        Reflect.construct(date, given.length === 0 ? [date.now() - backMs] : given, as),
      get: (date, key) => (key === 'now' ? () => date.now() - backMs : Reflect.get(date, key)),
    });
  }, 365 * 86_400_000);
  const told = /The clock of this device says Nov 25, 2025, but something was noted here on Nov 25, 2026/;
  await behind.goto('/orders');
  await behind.getByText(told).waitFor();
  await behind.goto(ORDER);
  await behind.getByText(told).waitFor();
  await note(behind, pointer, /^Accepted: /);
  await present(behind).filter({ hasText: 'Approval and deposit' }).waitFor();
  await looksRight(behind, 'order-clock-behind');
  await kept(behind);
  const mended = await openPage({ beside: behind, path: ORDER });
  await present(mended).filter({ hasText: 'Approval and deposit' }).waitFor();
  await mended.getByRole('tab', { name: 'Quote', exact: true }).click();
  await mended.getByText('Quote, version 1').first().waitFor();
  expect(await mended.getByText(told).count()).toBe(0);
});
