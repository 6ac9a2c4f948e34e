import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, inject, test } from 'vitest';
import { appKept } from '@/tests/e2e/harness/keptApp';
import { QUIET } from '@/tests/e2e/harness/keptStore';
import { type KillableBrowser, startKillable } from '@/tests/e2e/harness/killableBrowser';
import { COUNT, layPlan, tapsOn } from '@/tests/e2e/harness/stallShelf';
import {
  countOn,
  countShownOn,
  type Does,
  endsOf,
  ThumbDay,
  tapAll,
  thumbOf,
} from '@/tests/e2e/harness/stallThumb';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { cases } from '@/tests/tools/cases';

/* A thumb that taps where there is no network, while the page is reloaded and the battery ends. */

const TAPS = 500;
const RELOADS = 20;
const KILLS = 10;
const { seed = Math.floor(Math.random() * 2 ** 31), numRuns: rushes } = cases(12);

let profile: string;
let running: KillableBrowser | null = null;
beforeEach(async () => {
  profile = await mkdtemp(join(tmpdir(), 'stall-'));
});
afterEach(async () => {
  await running?.kill();
  running = null;
  await rm(profile, { recursive: true, force: true });
});

const isKept = (page: Page) => page.getByText(/^no signal needed · kept/).waitFor();

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

/** @returns a page at the count of a fair, on a device that has kept the app. */
async function firstAtTheStall(): Promise<Page> {
  const page = await start();
  await page.goto(`${inject('baseUrl')}/workshop`);
  await page.getByRole('heading', { level: 1 }).waitFor();
  await appKept(page);
  await page.goto(`${inject('baseUrl')}${QUIET}`);
  await layPlan(page);
  await atTheStall(page);
  expect(await tapsOn(page)).toEqual([]);
  return page;
}

/** @returns what the thumb taps next, until so many taps are written on the day */
function batchOf(thumb: Does[], day: ThumbDay, until: number): readonly Does[] {
  const batch: Does[] = [];
  while (day.written.length < until) {
    const does = thumb.shift();
    if (does === undefined) throw new Error('the thumb has too few moves');
    if (day.reckon(does)) batch.push(does);
  }
  return batch;
}

/** The page shows the day as it was reckoned. */
async function shows(page: Page, day: ThumbDay): Promise<void> {
  const shown = await countOn(page).locator('section button').allTextContents();
  expect(shown.map((text) => /(\d+) left$/.exec(text)?.[1] ?? '0')).toEqual(
    fairPlan.goods.map((_, at) => String(day.leftOf(at))),
  );
  await countOn(page).getByText(`${day.pieces} sold`).waitFor();
  await countOn(page)
    .getByText(`${(day.takenMinor / 100).toLocaleString('en-US')} USD taken`)
    .waitFor();
}

test(`of ${TAPS} taps without a network, through ${RELOADS} reloads and ${KILLS} kills, none is lost and none doubled, PROPERTY_SEED=${seed}`, async () => {
  const thumb = thumbOf(seed, TAPS * 2);
  const ends = endsOf(seed, { reload: RELOADS, kill: KILLS });
  const day = new ThumbDay();
  let page = await firstAtTheStall();
  const each = Math.ceil(TAPS / ends.length);
  for (const end of ends) {
    await tapAll(await countShownOn(page), batchOf(thumb, day, Math.min(TAPS, day.written.length + each)));
    await isKept(page);
    if (end === 'reload') await page.reload();
    else {
      await running?.kill();
      page = await start();
      await atTheStall(page);
    }
    await isKept(page);
    await shows(page, day);
  }
  expect(day.written).toHaveLength(TAPS);
  expect(await tapsOn(page)).toEqual(day.written);
});

test(`through ${rushes} reloads and kills in the middle of tapping, every tap that was said to be kept is there, and none is doubled, PROPERTY_SEED=${seed}`, async () => {
  const EACH = 25;
  const thumb = thumbOf(seed, rushes * EACH * 2);
  const kills = Math.ceil((rushes * 2) / 3);
  const ends = endsOf(seed, { kill: kills, reload: rushes - kills });
  /** How long after the first tap of each the page ends, ms: tapping all takes some 300. */
  const moments = fc.sample(fc.integer({ min: 0, max: 400 }), { seed, numRuns: rushes });
  let page = await firstAtTheStall();
  let day = new ThumbDay();
  let saidKept = 0;
  const listen = (one: Page) =>
    one.exposeFunction('thumbKept', (taps: number) => {
      saidKept = Math.max(saidKept, taps);
    });
  await listen(page);
  for (const [at, end] of ends.entries()) {
    const before = day.written.length;
    saidKept = 0;
    const batch = batchOf(thumb, day, before + EACH);
    // The page goes while it is tapped.
    const tapping = tapAll(await countShownOn(page), batch).catch(() => undefined);
    await new Promise((resolve) => setTimeout(resolve, moments[at]));
    if (end === 'reload') {
      await page.reload();
      await isKept(page);
    } else {
      await running?.kill();
      page = await start();
      await listen(page);
      await atTheStall(page);
    }
    await tapping;
    const kept = await tapsOn(page);
    expect(kept.length).toBeGreaterThanOrEqual(before + saidKept);
    expect(kept).toEqual(day.written.slice(0, kept.length));
    day = day.after(kept.length);
    await shows(page, day);
  }
});
