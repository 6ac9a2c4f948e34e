import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { appKept } from '@/tests/e2e/harness/keptApp';
import { QUIET } from '@/tests/e2e/harness/keptStore';
import { type KillableBrowser, startKillable } from '@/tests/e2e/harness/killableBrowser';
import { COUNT, layPlan, tapsOn } from '@/tests/e2e/harness/stallShelf';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { cases } from '@/tests/tools/cases';

/* A thumb that taps 500 times where there is no network, while the page is reloaded and the battery ends. */

const TAPS = 500;
const RELOADS = 20;
const KILLS = 10;
const { seed = Math.floor(Math.random() * 2 ** 31) } = cases(1);

let profile: string;
let running: KillableBrowser | null = null;
beforeAll(async () => {
  profile = await mkdtemp(join(tmpdir(), 'stall-'));
});
afterAll(async () => {
  await running?.kill();
  await rm(profile, { recursive: true, force: true });
});

/** What a thumb does: a tile by its place, or another key. */
type Does = number | 'undo' | 'next' | 'pay';
const sample = <Of>(arbitrary: fc.Arbitrary<Of>, count: number): readonly Of[] =>
  fc.sample(arbitrary, { seed, numRuns: count });
const thumb = [
  ...sample(
    fc.oneof(
      { arbitrary: fc.nat(fairPlan.goods.length - 1), weight: 14 },
      { arbitrary: fc.constant<Does>('undo'), weight: 2 },
      { arbitrary: fc.constant<Does>('next'), weight: 5 },
      { arbitrary: fc.constant<Does>('pay'), weight: 1 },
    ),
    TAPS * 2,
  ),
];
const breaks = [...Array<string>(RELOADS).fill('reload'), ...Array<string>(KILLS).fill('kill')];
const [ends = breaks] = sample(fc.shuffledSubarray(breaks, { minLength: breaks.length }), 1);

/** The day reckoned beside the app, by hand: what counts is a stack, whose last goes with undo. */
const stack: { readonly does: Exclude<Does, 'undo'>; readonly isSale: boolean }[] = [];
const written: string[] = [];
const sold = (at: number) => stack.filter(({ does, isSale }) => does === at && isSale).length;
const leftOf = (at: number) => (fairPlan.goods[at]?.bring ?? 0) - sold(at);
const hasTicket = () => {
  const since = stack.slice(stack.findLastIndex(({ does }) => does === 'next') + 1);
  return since.some(({ isSale }) => isSale);
};

/** @returns whether the thumb would tap anything by it now */
function reckon(does: Does): boolean {
  if (does === 'undo') {
    if (stack.pop() === undefined) return false;
    written.push('undo');
    return true;
  }
  if (does === 'next' && !hasTicket()) return false;
  const isSale = typeof does === 'number' && leftOf(does) > 0;
  written.push(typeof does === 'number' ? (isSale ? 'sale' : 'asked') : does);
  stack.push({ does, isSale });
  return true;
}

const room = (page: Page) => page.locator('[data-stall-count]');
const isKept = (page: Page) => page.getByText(/^no signal needed · kept/).waitFor();

/** Taps as fast as a page can be tapped, one after the other. */
const tapAll = (page: Page, taps: readonly Does[]): Promise<void> =>
  room(page).evaluate(async (element, all) => {
    const tiles = [...element.querySelectorAll<HTMLElement>('section button')];
    const named = (pattern: RegExp) =>
      [...element.querySelectorAll<HTMLElement>('button')].find(({ textContent }) =>
        pattern.test(textContent ?? ''),
      );
    for (const does of all) {
      const key =
        typeof does === 'number'
          ? tiles[does]
          : does === 'pay'
            ? element.querySelector<HTMLElement>('[aria-pressed="false"]')
            : named(does === 'undo' ? /^Undo/ : /^Next customer/);
      key?.click();
      await new Promise((resolve) => setTimeout(resolve, 10));
    }
  }, taps);

async function start(): Promise<Page> {
  running = await startKillable(profile);
  return running.page;
}

/** Without a network from here on. */
async function atTheStall(page: Page): Promise<void> {
  await page.context().setOffline(true);
  await page.goto(`${inject('baseUrl')}${COUNT}`);
  await isKept(page);
}

test(`of ${TAPS} taps without a network, through ${RELOADS} reloads and ${KILLS} kills, none is lost and none doubled, PROPERTY_SEED=${seed}`, async () => {
  let page = await start();
  await page.goto(`${inject('baseUrl')}/workshop`);
  await page.getByRole('heading', { level: 1 }).waitFor();
  await appKept(page);
  await page.goto(`${inject('baseUrl')}${QUIET}`);
  await layPlan(page);
  await atTheStall(page);
  expect(await tapsOn(page)).toEqual([]);
  const each = Math.ceil(TAPS / ends.length);
  for (const end of ends) {
    const most = Math.min(TAPS, written.length + each);
    const batch: Does[] = [];
    while (written.length < most) {
      const does = thumb.shift();
      if (does === undefined) throw new Error('the thumb has too few moves');
      if (reckon(does)) batch.push(does);
    }
    await tapAll(page, batch);
    await isKept(page);
    if (end === 'reload') await page.reload();
    else {
      await running?.kill();
      page = await start();
      await atTheStall(page);
    }
    await isKept(page);
    const shown = await room(page).locator('section button').allTextContents();
    expect(shown.map((text) => /(\d+) left$/.exec(text)?.[1] ?? '0')).toEqual(
      fairPlan.goods.map((_, at) => String(leftOf(at))),
    );
  }
  expect(written).toHaveLength(TAPS);
  const pieces = stack.filter(({ isSale }) => isSale).length;
  const taken = stack.reduce(
    (sum, { does, isSale }) =>
      typeof does === 'number' && isSale ? sum + (fairPlan.goods[does]?.price ?? 0) : sum,
    0,
  );
  await room(page).getByText(`${pieces} sold`).waitFor();
  await room(page)
    .getByText(`${(taken / 100).toLocaleString('en-US')} USD taken`)
    .waitFor();
  expect([...(await tapsOn(page))].sort()).toEqual([...written].sort());
});
