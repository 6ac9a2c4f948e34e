import type { Locator, Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { springFairDay } from '@/lib/examples/springFair';
import { bringIn, type FileToBringIn, savedFile, take } from '@/tests/e2e/harness/copyFiles';
import { kept, section, unfold } from '@/tests/e2e/harness/docketPage';
import { keyboard } from '@/tests/e2e/harness/hands';
import { appKept, cutNetwork } from '@/tests/e2e/harness/keptApp';
import { keysOn } from '@/tests/e2e/harness/keptStore';
import { looksRight } from '@/tests/e2e/harness/looksRight';
import { openPage } from '@/tests/e2e/harness/openPage';
import { type OwnServer, ownServer } from '@/tests/e2e/harness/ownServer';
import { FIXED_DAY } from '@/tests/tools/clock/testDay';

/* One stall day from the plan to the close: fixed on a laptop, counted on two phones, put together in the evening. */

const DAY = '/stall/spring-fair';
const COUNT = `${DAY}/count`;
const AHEAD_MS = Date.parse(springFairDay(FIXED_DAY)) - Date.parse(FIXED_DAY);

let server: OwnServer;
beforeEach(async () => {
  server = await ownServer(process.cwd());
  await server.start();
});
afterEach(() => server.end());

const car = (page: Page): Locator => section(page, 'Car and tin');
const tile = (page: Page, name: string): Locator =>
  page.getByRole('button', { name: new RegExp(`^${name}, `) });
const keyOf = (page: Page, name: string | RegExp): Locator => page.getByRole('button', { name });

/** From its next page on it is the day of the fair for this device. */
async function onTheDay(page: Page): Promise<void> {
  await page.addInitScript((aheadMs) => {
    globalThis.Date = new Proxy(Date, {
      construct: (date, given, as) =>
        Reflect.construct(date, given.length === 0 ? [date.now() + aheadMs] : given, as),
      get: (date, key) => (key === 'now' ? () => date.now() + aheadMs : Reflect.get(date, key)),
    });
  }, AHEAD_MS);
}

/** Takes the advice of 81 shirts and 28 mugs, fixes it, and makes the file for a phone. */
async function loadTheCar(laptop: Page): Promise<FileToBringIn> {
  await laptop.getByRole('button', { name: 'Take the 109' }).click();
  await laptop.getByText('81 shirts, 28 mugs').waitFor();
  await kept(laptop);
  await laptop.locator('#car').getByRole('button', { name: 'Fix the plan' }).click();
  await car(laptop).getByText('109 pieces').waitFor();
  await kept(laptop);
  await unfold(car(laptop), /^To the phone and back/);
  return savedFile(laptop, car(laptop).getByRole('button', { name: 'Take it to the phone' }));
}

/** Brings the plan in on a phone and opens the count on the day of the fair. */
async function atTheStall(phone: Page, file: FileToBringIn): Promise<void> {
  await kept(phone);
  await bringIn(phone, file);
  await take(phone).click();
  await expect.poll(() => take(phone).count()).toBe(0);
  await kept(phone);
  await onTheDay(phone);
}

/** The file of a phone with its count. */
async function countFile(phone: Page): Promise<FileToBringIn> {
  await keyOf(phone, /^More$/).click();
  const more = phone.getByRole('dialog', { name: 'More' });
  await more.getByText('This phone').click();
  const file = await savedFile(phone, more.getByRole('button', { name: 'Carry to another device' }));
  await more.getByRole('button', { name: 'Close' }).click();
  return file;
}

/** Brings a file back where the car of the day is. */
async function bringBack(laptop: Page, file: FileToBringIn): Promise<void> {
  await laptop.goto(DAY);
  await unfold(car(laptop), /^To the phone and back/);
  await car(laptop).getByLabel('Copy or carried file').setInputFiles(file);
}

/** What takes it there: other buttons of the car begin with the same words. */
const takeThere = (laptop: Page): Locator =>
  car(laptop).getByRole('button', {
    name: /^(?:Bring|Take) (?:it|them|the (?!plan|count).+) (?:in|back|over)$/,
  });

async function takeBack(laptop: Page, file: FileToBringIn): Promise<void> {
  await bringBack(laptop, file);
  await takeThere(laptop).click();
  await expect.poll(() => takeThere(laptop).count()).toBe(0);
  await kept(laptop);
}

const isKept = (phone: Page) => phone.getByText(/^no signal needed · kept/).waitFor();

/** Twenty taps by a finger where there is no network: eight pieces, 75 in cash and 122 by card. */
async function firstPhone(phone: Page): Promise<void> {
  const press = (key: Locator) => key.tap();
  const next = () => press(keyOf(phone, /^Next customer/));
  await press(tile(phone, 'Fern M'));
  await next();
  await press(tile(phone, 'Otter L'));
  await press(tile(phone, 'Otter L'));
  await press(keyOf(phone, /^Two shirts/));
  await next();
  await press(keyOf(phone, 'Cash'));
  // A mug, 16.
  await press(tile(phone, 'Fern'));
  await next();
  await press(tile(phone, 'Fern 2XL'));
  await press(keyOf(phone, /^Undo ?Fern 2XL, 31$/));
  await press(tile(phone, 'Lighthouse S'));
  await next();
  await isKept(phone);
  await phone.reload();
  // The only one there is, and somebody who asks for another.
  await press(tile(phone, 'Star Map 3XL'));
  await press(keyOf(phone, /^Star Map 3XL, none left: count as asked for$/));
  await next();
  await press(keyOf(phone, 'Card'));
  await press(tile(phone, 'Otter M'));
  await press(tile(phone, 'Star Map'));
  await next();
  await isKept(phone);
  // 28 + (28 + 28 − 6) + 16 + 28 + 31 + (28 + 16).
  await phone.getByText('197 USD taken').waitFor();
  await phone.getByText('8 sold').waitFor();
}

/** Two shirts by card whose buyer takes no pair, and a mug in cash, by keys: three pieces, 56 and 16. */
async function secondPhone(phone: Page): Promise<void> {
  const next = () => keyboard.press(keyOf(phone, /^Next customer/));
  await keyboard.press(tile(phone, 'Fern L'));
  await keyboard.press(tile(phone, 'Fern L'));
  await next();
  await keyboard.press(keyOf(phone, 'Cash'));
  await keyboard.press(tile(phone, 'Otter'));
  await next();
  await isKept(phone);
  await phone.getByText('72 USD taken').waitFor();
}

test('a fair is planned on a laptop, counted on two phones, put together and closed', async () => {
  const laptop = await openPage({ path: DAY });
  const file = await loadTheCar(laptop);
  const phone = await openPage({ path: '/workshop#copies', width: 390, keptFrom: server.baseUrl });
  await appKept(phone);
  await atTheStall(phone, file);
  await cutNetwork(phone);
  await phone.goto(COUNT);
  await isKept(phone);
  // 3 + 6 + 7 + 5 + 2 + 1 of Fern come along, and so on: the advice row for row.
  const fern = phone.getByRole('region', { name: 'Fern' }).getByRole('button');
  expect(await fern.allTextContents()).toEqual(
    ['S3', 'M6', 'L7', 'XL5', '2XL2', '3XL1'].map((one) => `${one} left`),
  );
  await firstPhone(phone);
  await looksRight(phone, 'stall-day-count');
  const first = await countFile(phone);

  const other = await openPage({ path: '/workshop#copies', width: 1280 });
  await atTheStall(other, file);
  await other.goto(COUNT);
  await isKept(other);
  await secondPhone(other);
  const second = await countFile(other);

  await onTheDay(laptop);
  await takeBack(laptop, first);
  await takeBack(laptop, second);
  const once = await keysOn(laptop, ['papers', 'entries']);
  await bringBack(laptop, first);
  await laptop.getByText('is the same here already', { exact: false }).first().waitFor();
  expect(await takeThere(laptop).count()).toBe(0);
  expect(await keysOn(laptop, ['papers', 'entries'])).toEqual(once);
  await evening(laptop);
});

/** 11 of 109 pieces for 197 + 72; 115 of float and 75 + 16 in cash; 122 + 56 by card on four tickets. */
async function evening(laptop: Page): Promise<void> {
  await laptop.goto(`${DAY}/evening`);
  await laptop.getByText(/, 11 of 109 pieces sold$/).waitFor();
  await laptop.getByText('269.00', { exact: true }).first().waitFor();
  const cash = section(laptop, 'Cash');
  await cash.getByText('206.00', { exact: true }).first().waitFor();
  const card = section(laptop, 'Card');
  await card.getByText('4 tickets').waitFor();
  // 2.6 % of 178 and 0.10 four times are 5.03.
  await card.getByText('172.97', { exact: true }).first().waitFor();
  // 269 less 269 / 1.07.
  await section(laptop, 'Tax').getByText('17.60', { exact: true }).first().waitFor();
  await section(laptop, 'Stock').getByText('98', { exact: true }).first().waitFor();
  await cash.getByLabel(/^All that is in the tin/).fill('204');
  await cash.getByText('2.00 short:').waitFor();
  await cash.getByRole('radio', { name: 'Wrong change' }).check();
  await keyOf(laptop, 'All is as it should be').click();
  await section(laptop, 'Stock').getByText('98 left').waitFor();
  await keyOf(laptop, 'Close the day').click();
  await keyOf(laptop, 'Close it again').waitFor();
  await kept(laptop);
  await laptop.reload();
  await laptop.getByText(/, 11 of 109 pieces sold, closed$/).waitFor();
}

test('a file of another day is told before anything is brought in, and counts nothing here', async () => {
  const page = await openPage({ path: '/stall' });
  await keyOf(page, 'New stall day').click();
  await page.getByRole('textbox', { name: 'Name of the fair or market' }).fill('Harbour market');
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { level: 1, name: 'Harbour market' }).waitFor();
  await kept(page);
  await unfold(car(page), /^To the phone and back/);
  const file = await savedFile(page, car(page).getByRole('button', { name: 'Take it to the phone' }));
  await bringBack(page, file);
  await page
    .getByText(
      'This file is of Harbour market, not of Exampleton Spring Fair. Bringing it in counts nothing for Exampleton Spring Fair.',
    )
    .waitFor();
});
