import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { bringIn, copyOf, type FileToBringIn, savedFile, take } from '@/tests/e2e/harness/copyFiles';
import { kept, section } from '@/tests/e2e/harness/docketPage';
import { keysOn, leaveFormerStore, QUIET } from '@/tests/e2e/harness/keptStore';
import { looksRight } from '@/tests/e2e/harness/looksRight';
import { openPage } from '@/tests/e2e/harness/openPage';

const JOB = '/jobs/club-order';
const ALL = ['documents', 'entries', 'papers', 'files'] as const;

/** Two devices; the second was filled by a copy of the first. The job on them has a picture. */
async function twoDevices(): Promise<{ readonly laptop: Page; readonly phone: Page }> {
  const laptop = await openPage({ path: QUIET });
  await leaveFormerStore(laptop);
  const copy = await copyOf(laptop);
  const phone = await openPage({ path: '/workshop#copies', width: 390 });
  await kept(phone);
  await bringIn(phone, copy);
  await phone.getByRole('button', { name: 'Put the copy in place of all this' }).click();
  await phone.getByRole('button', { name: 'Put the copy in its place' }).click();
  await phone.getByText('The copy is in place of what was here.').waitFor();
  return { laptop, phone };
}

const price = (page: Page) =>
  section(page, 'The job').getByRole('textbox', { name: 'Price of a shirt', exact: true });

async function priceAt(page: Page, text: string): Promise<void> {
  await page.goto(JOB);
  await price(page).fill(text);
  await price(page).blur();
  await kept(page);
}

async function rename(page: Page, name: string): Promise<void> {
  await page.goto(JOB);
  const heading = page.getByRole('heading', { level: 1 });
  await heading.getByRole('button').click();
  await heading.getByRole('textbox').fill(name);
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { level: 1, name }).waitFor();
  await kept(page);
}

async function carried(page: Page): Promise<FileToBringIn> {
  await page.goto(JOB);
  const file = await savedFile(page, page.getByRole('button', { name: 'Carry to another device' }));
  await page.getByText(/^Saved as /).waitFor();
  return file;
}

/** Brings a file in and takes it as it is offered. */
async function taken(page: Page, file: FileToBringIn, headline: string): Promise<void> {
  await page.goto('/workshop#copies');
  await bringIn(page, file);
  await page.getByRole('heading', { name: headline }).waitFor();
  await take(page).click();
  await expect.poll(() => take(page).count()).toBe(0);
  await kept(page);
}

test('a job with its picture goes to another device, is priced there and comes back, twice without harm', async () => {
  const { laptop, phone } = await twoDevices();
  await priceAt(phone, '21');
  const back = await carried(phone);
  await taken(laptop, back, 'is newer in the file and would be brought up to date');
  const once = await keysOn(laptop, ALL);
  await laptop.goto('/workshop#copies');
  await bringIn(laptop, back);
  await laptop.getByRole('heading', { name: 'is the same here already' }).waitFor();
  await looksRight(laptop, 'carried-again');
  expect(await take(laptop).count()).toBe(0);
  await laptop.goto(JOB);
  await expect.poll(() => price(laptop).inputValue()).toBe('21.00');
  // On again from there, to the one it came from.
  const onPhone = await keysOn(phone, ALL);
  await priceAt(laptop, '22');
  await taken(phone, await carried(laptop), 'is newer in the file and would be brought up to date');
  await phone.goto(JOB);
  await expect.poll(() => price(phone).inputValue()).toBe('22.00');
  expect(await keysOn(phone, ALL)).toEqual(onPhone);
  expect(await keysOn(laptop, ALL)).toEqual(once);
});

test('what was changed on both devices in different places is put together', async () => {
  const { laptop, phone } = await twoDevices();
  await priceAt(phone, '21');
  await rename(laptop, 'Club shirts for spring');
  await taken(laptop, await carried(phone), 'has changed on both devices, in different places');
  await laptop.goto(JOB);
  await laptop.getByRole('heading', { level: 1, name: 'Club shirts for spring' }).waitFor();
  await expect.poll(() => price(laptop).inputValue()).toBe('21.00');
});

test('where both devices changed the same both jobs stay, and a blank that differs too', async () => {
  const { laptop, phone } = await twoDevices();
  for (const [page, shirt, blank] of [
    [phone, '21', '5.30'],
    [laptop, '19', '5.20'],
  ] as const) {
    await priceAt(page, shirt);
    await page.goto('/blanks');
    await page.getByRole('button', { name: 'White shirt, 100 % polyester' }).first().click();
    const price = page.getByRole('textbox', { name: 'M', exact: true });
    await price.fill(blank);
    await price.blur();
    await kept(page);
  }
  const file = await carried(phone);
  await taken(laptop, file, 'has changed on both devices: both would be kept');
  await laptop.goto('/jobs');
  await expect.poll(() => laptop.getByRole('row', { name: /^Ramblers Club shirts/ }).count()).toBe(2);
  await laptop.goto('/blanks');
  const shirts = laptop.getByRole('button', { name: /^White shirt, 100 % polyester/ });
  await expect.poll(() => shirts.count()).toBe(2);
  const once = await keysOn(laptop, ALL);
  await laptop.goto('/workshop#copies');
  await bringIn(laptop, file);
  // It was weighed already, and lies beside what the laptop kept.
  await laptop.getByRole('heading', { name: 'came in beside yours before; both stay' }).waitFor();
  expect(await take(laptop).count()).toBe(0);
  expect(await keysOn(laptop, ALL)).toEqual(once);
  // What the laptop kept is no later version of the phone's: there both are weighed as well.
  const fromLaptop = await carried(laptop);
  await phone.goto('/workshop#copies');
  await bringIn(phone, fromLaptop);
  await phone.getByRole('heading', { name: 'has changed on both devices: both would be kept' }).waitFor();
});
