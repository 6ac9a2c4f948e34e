import { expect, test } from 'vitest';
import { bringIn, copyOf } from '@/tests/e2e/harness/copyFiles';
import { roomOn } from '@/tests/e2e/harness/deviceRoom';
import { expectPriceBar, kept, priced, section } from '@/tests/e2e/harness/docketPage';
import { expectFormerFigures } from '@/tests/e2e/harness/formerFigures';
import { keysOn, leaveFormerStore, QUIET } from '@/tests/e2e/harness/keptStore';
import { looksRight } from '@/tests/e2e/harness/looksRight';
import { openPage } from '@/tests/e2e/harness/openPage';

const ALL = ['documents', 'entries', 'papers', 'files', 'steps', 'meta'] as const;

test('a version issued on a full disk is told, leaves nothing, and its number goes to the next', async () => {
  const page = await openPage({ path: '/price-lists/club-prices' });
  await page.getByText('Nothing stands in the way.').waitFor();
  await kept(page);
  const before = await keysOn(page, ALL);
  const room = await roomOn(page);
  await room.fill();
  const issue = page.getByRole('button', { name: /^Issue version 1[A-Z]?$/ });
  await issue.click();
  await page
    .getByText(/The device has no room left\./)
    .first()
    .waitFor();
  await looksRight(page, 'full-disk');
  expect(await keysOn(page, ALL)).toEqual(before);
  await room.free();
  await issue.click();
  await page.getByRole('article', { name: /^Price list, version 1[A-Z]$/ }).waitFor();
  await page.reload();
  await page.getByRole('article', { name: /^Price list, version 1[A-Z]$/ }).waitFor();
  await kept(page);
  expect((await keysOn(page, ['papers'])).length).toBe(1);
});

test('a copy taken in on a full disk is told, leaves nothing, and comes in once there is room', async () => {
  const from = await openPage({ path: QUIET });
  await leaveFormerStore(from);
  const copy = await copyOf(from);
  const page = await openPage({ path: '/workshop#copies' });
  await kept(page);
  await bringIn(page, copy);
  await page.getByRole('button', { name: 'Put the copy in place of all this' }).click();
  const before = await keysOn(page, ['documents', 'entries', 'papers', 'files', 'steps']);
  const room = await roomOn(page);
  await room.fill();
  await page.getByRole('button', { name: 'Put the copy in its place' }).click();
  await page
    .getByRole('alert')
    .filter({ hasText: /The device has no room left\..*Nothing here was changed\./ })
    .first()
    .waitFor();
  expect(await keysOn(page, ['documents', 'entries', 'papers', 'files', 'steps'])).toEqual(before);
  await room.free();
  await page.getByRole('button', { name: 'Put the copy in its place' }).click();
  await page.getByText('The copy is in place of what was here.').waitFor();
  await expectFormerFigures(page);
});

test('what is typed on a full disk stays on the screen, is told, and is kept once there is room', async () => {
  const page = await openPage();
  await priced(page);
  await kept(page);
  const room = await roomOn(page);
  await room.fill();
  const price = section(page, 'The job').getByRole('textbox', { name: 'Price of a shirt', exact: true });
  await price.fill('21');
  await price.blur();
  await page.getByRole('alert').filter({ hasText: 'The device has no room left.' }).first().waitFor();
  await expectPriceBar(page, /21\.00/);
  await room.free();
  await page.getByRole('button', { name: 'Try again' }).click();
  await kept(page);
  await page.reload();
  await priced(page);
  await expect.poll(() => price.inputValue()).toBe('21.00');
});

test.each(['keeps nothing on the device', 'forbids keeping anything'])(
  'a browser that %s says so, and the app works in memory',
  async (words) => {
    const page = await openPage({ path: QUIET });
    await page.addInitScript((isForbidden) => {
      Object.defineProperty(window, 'indexedDB', {
        get: () => {
          if (isForbidden) throw new DOMException('The operation is insecure.', 'SecurityError');
          return undefined;
        },
      });
    }, words.startsWith('forbids'));
    await page.goto('/jobs/club-order');
    await priced(page);
    await page.getByRole('alert').filter({ hasText: words }).first().waitFor();
    const price = section(page, 'The job').getByRole('textbox', { name: 'Price of a shirt', exact: true });
    await price.fill('21');
    await price.blur();
    await expectPriceBar(page, /21\.00/);
    await page.getByRole('link', { name: 'Workshop', exact: true }).click();
    await page.getByText('A copy is the only way to keep what is here.').waitFor();
  },
);

test('a clock set back is told, and what was noted stands as it was', async () => {
  const page = await openPage({ path: QUIET });
  await leaveFormerStore(page);
  await page.goto('/workshop#ink-refill');
  const form = page.getByRole('form', { name: 'A refill' });
  await form.getByRole('textbox', { name: 'Poured in, all colours' }).fill('62.5');
  await form.getByRole('button', { name: 'Note the refill' }).click();
  await kept(page);
  await page.getByRole('button', { name: /^Take back Refill of 25 Nov 2026/ }).click();
  await kept(page);
  // Forty days back, on top of the day all tests have.
  await page.addInitScript((backMs) => {
    globalThis.Date = new Proxy(Date, {
      construct: (date, given, as) =>
        Reflect.construct(date, given.length === 0 ? [date.now() - backMs] : given, as),
      get: (date, key) => (key === 'now' ? () => date.now() - backMs : Reflect.get(date, key)),
    });
  }, 40 * 86_400_000);
  // Another place within one page would not be opened anew.
  await page.goto(QUIET);
  await page.goto('/workshop#device');
  await page
    .getByText(/The clock of this device says 16 Oct 2026, but something was noted here on 25 Nov 2026/)
    .waitFor();
  await expectFormerFigures(page);
  await page.goto('/workshop#ink-refill');
  await form.getByRole('textbox', { name: 'Poured in, all colours' }).fill('5');
  await form.getByRole('button', { name: 'Note the refill' }).click();
  await kept(page);
  await page.getByRole('button', { name: /^Take back Refill of 16 Oct 2026/ }).click();
  await kept(page);
  await expectFormerFigures(page);
});
