import { cpus, loadavg } from 'node:os';
import { type Browser, chromium, type Page } from 'playwright-core';
import type { Tap } from '@/shared/schemas/stallEvents';
import { QUIET } from '@/tests/e2e/harness/keptStore';
import { setClock } from '@/tests/e2e/harness/setClock';
import { COUNT, layPlan, layTaps } from '@/tests/e2e/harness/stallShelf';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { saleOf } from '@/tests/fixtures/stallTaps';
import { FIXED_DAY } from '@/tests/tools/clock/testDay';
import { findChromium } from '@/tests/tools/findChromium.mjs';
import { median, percentile } from './measure';
import { servedApp } from './servedApp';

/*
 * npm run bench:taps [-- --url http://127.0.0.1:3000] [--taps 60]: how long a thumb waits at the count with 2,000 sales in
 * the day: from the tap to the tile's new number, to the next picture on the screen, and how long the page is held up
 * while the tap is kept. Here and on a phone four times as slow.
 */

const SALES = 2000;
const machines = [
  ['this machine', 1],
  ['phone', 4],
] as const;
const PATIENCE_MS = 90_000;

const option = (name: string): string | null => {
  const at = process.argv.indexOf(`--${name}`);
  return at < 0 ? null : (process.argv[at + 1] ?? null);
};
const taps = Number(option('taps') ?? 60);
const url = option('url');

/** All of one machine, ms. */
interface Measured {
  readonly machine: string;
  /** From the tap to the tile's new number. */
  readonly told: readonly number[];
  /** From the tap to the next picture. */
  readonly painted: readonly number[];
  /** Each time the page was held up for 50 ms or longer. */
  readonly heldUp: readonly number[];
}

const rows = url === null ? await servedApp(measureAll) : await measureAll(url);
if (rows === null) throw new Error('There is no build to measure: run `npm run build` first.');
const place = `${cpus().length} × ${cpus()[0]?.model ?? 'unknown'}, load ${loadavg()[0]?.toFixed(1)}`;
process.stdout.write(
  `a tap with ${SALES.toLocaleString('en')} sales in the day, ${taps} taps, ms; ${place}\n`,
);
for (const row of rows) process.stdout.write(`${lineOf(row)}\n`);

// Helpers

function lineOf({ machine, told, painted, heldUp }: Measured): string {
  const of = (what: string, times: readonly number[]) =>
    `${what}: median ${median(times).toFixed(1)}, 95 of 100 within ${percentile(times, 0.95).toFixed(1)}, worst ${Math.max(...times).toFixed(1)}`;
  const longest = heldUp.length === 0 ? '' : `, ${Math.max(...heldUp).toFixed(0)} at most`;
  return `${machine.padEnd(14)} ${of('new number', told)}; ${of('next picture', painted)}; held up for 50 or longer ${heldUp.length} times${longest}`;
}

async function measureAll(origin: string): Promise<readonly Measured[]> {
  const executablePath = await findChromium();
  if (executablePath === undefined) throw new Error('No Chromium was found; CHROMIUM_PATH names one.');
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
  const done: Measured[] = [];
  for (const [machine, slower] of machines)
    done.push({ machine, ...(await measure(await counting(browser, origin), slower)) });
  await browser.close();
  return done;
}

/** A phone at the count of a day in which so much was sold. */
async function counting(browser: Browser, baseURL: string): Promise<Page> {
  const context = await browser.newContext({
    baseURL,
    ...{ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true },
    ...{ locale: 'en-US', timezoneId: 'UTC', serviceWorkers: 'block' },
  });
  context.setDefaultTimeout(PATIENCE_MS);
  await setClock(context, `${FIXED_DAY}T09:00:00Z`);
  // The name-giver that the runner's compiler puts around functions; the page does not have it.
  await context.addInitScript('globalThis.__name = (named) => named;');
  const page = await context.newPage();
  await page.goto('/workshop');
  await page.getByRole('heading', { level: 1 }).waitFor();
  await page.goto(QUIET);
  const goods = fairPlan.goods.map((one) => ({ ...one, bring: 1000 }));
  await layPlan(page, { ...fairPlan, goods });
  const sold = Array.from({ length: (SALES * 3) / 2 }, (_, at): Tap => {
    const one = goods[at % goods.length];
    return at % 3 === 2 || one === undefined ? { what: 'next' } : saleOf(one);
  });
  await layTaps(page, sold);
  await page.goto(COUNT);
  await page.getByText(String(SALES), { exact: true }).waitFor();
  return page;
}

/** Touches one tile again and again, as a thumb does, each once the tap before is kept. */
async function measure(page: Page, slower: number): Promise<Omit<Measured, 'machine'>> {
  const device = await page.context().newCDPSession(page);
  await device.send('Emulation.setCPUThrottlingRate', { rate: slower });
  await page.evaluate(watchTaps);
  const tile = page.getByRole('button', { name: /^Fern S, / });
  for (let tap = 0; tap < taps; tap += 1) {
    await tile.tap();
    await page.waitForFunction(
      (done) => (Reflect.get(globalThis, 'tapsSeen') as { painted: number[] }).painted.length > done,
      tap,
    );
    await page.getByText(/^no signal needed · kept/).waitFor();
  }
  const seen = await page.evaluate(
    () => Reflect.get(globalThis, 'tapsSeen') as { told: number[]; painted: number[]; heldUp: number[] },
  );
  await page.context().close();
  return seen;
}

/** In the page: notes of each click when the tile's words were new and when the picture after it was drawn. */
function watchTaps(): void {
  const seen: { told: number[]; painted: number[]; heldUp: number[] } = { told: [], painted: [], heldUp: [] };
  Reflect.set(globalThis, 'tapsSeen', seen);
  new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries()) seen.heldUp.push(duration);
  }).observe({ type: 'longtask' });
  document.addEventListener(
    'click',
    ({ target, timeStamp }) => {
      const tile = target instanceof Element ? target.closest('button') : null;
      if (tile === null) return;
      const watch = new MutationObserver(() => {
        watch.disconnect();
        seen.told.push(performance.now() - timeStamp);
        requestAnimationFrame(() => {
          // The first message after a frame was asked for comes once it was drawn.
          const { port1, port2 } = new MessageChannel();
          port1.onmessage = () => seen.painted.push(performance.now() - timeStamp);
          port2.postMessage(null);
        });
      });
      watch.observe(tile, { subtree: true, childList: true, characterData: true });
    },
    true,
  );
}
