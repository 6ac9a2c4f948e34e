import type { BrowserContext, Page } from 'playwright-core';
import { notePage, type PageNotes } from './notePage';
import type { SlowLine } from './slowLine';

/** A machine a page is measured on. */
export interface Machine {
  readonly name: string;
  /** How many times slower than this one its processor is. */
  readonly slower: number;
  /** Null for the line this machine has to itself. */
  readonly line: { readonly bytesPerSecond: number; readonly roundTripMs: number } | null;
}

/** What one visit of a page showed. */
export interface Visit extends PageNotes {
  /** Bytes that came over the line, of everything. */
  readonly bytes: number;
  /** Bytes of scripts as they came over the line. */
  readonly scriptBytes: number;
}

/** Nothing new for so long is the end of loading. */
const QUIET_MS = 1_500;
const PATIENCE_MS = 45_000;

/** Opens a page, lets it come to rest, makes one edit, waits until the app is kept and says what it was like. */
export async function visitPage(
  context: BrowserContext,
  address: string,
  { machine, line }: { readonly machine: Machine; readonly line: SlowLine },
): Promise<Visit> {
  const page = await context.newPage();
  // The name-giver that the runner's compiler puts around functions; the page does not have it.
  await page.addInitScript('globalThis.__name = (named) => named;');
  await page.addInitScript(notePage);
  let scriptBytes = 0;
  let lastHeard = performance.now();
  page.on('requestfinished', async (request) => {
    lastHeard = performance.now();
    if (!new URL(request.url()).pathname.endsWith('.js')) return;
    const sizes = await request.sizes().catch(() => null);
    // What came from the cache is told as less than nothing.
    scriptBytes += Math.max(0, sizes?.responseBodySize ?? 0);
  });
  page.on('request', () => {
    lastHeard = performance.now();
  });
  const device = await context.newCDPSession(page);
  if (machine.slower > 1) await device.send('Emulation.setCPUThrottlingRate', { rate: machine.slower });
  const before = line.bytes();
  await page.goto(address, { waitUntil: 'load', timeout: PATIENCE_MS });
  const until = performance.now() + PATIENCE_MS;
  while (performance.now() < until && !(await isAtRest(page, performance.now() - lastHeard))) {
    await page.waitForTimeout(200);
  }
  const loaded = await notesOf(page);
  const bytes = line.bytes() - before;
  const interaction = await oneEdit(page);
  // The next visit is one from the device, and does not share its line with what the first one left to be fetched.
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await page.close();
  return { ...loaded, interaction, bytes, scriptBytes };
}

/** Nothing is fetched, nothing changes, and the page no longer says that it is opening. */
const isAtRest = async (page: Page, silentMs: number): Promise<boolean> =>
  silentMs > QUIET_MS &&
  (await page.evaluate(
    (quietMs) =>
      performance.now() - Reflect.get(globalThis, 'pageNotes').lastStir > quietMs &&
      ![...document.querySelectorAll('main [role="status"]')].some((one) =>
        /Opening/.test(one.textContent ?? ''),
      ),
    QUIET_MS,
  ));

/** @returns how long the page took to show one edit, in ms; null where there is nothing to edit. */
async function oneEdit(page: Page): Promise<number | null> {
  const slider = page.getByRole('slider').first();
  const field = page.locator('main input[inputmode]').first();
  const target = (await slider.count()) > 0 ? slider : (await field.count()) > 0 ? field : null;
  if (target === null) return null;
  await target.focus();
  await page.evaluate(() => Reflect.set(Reflect.get(globalThis, 'pageNotes'), 'interaction', null));
  await page.keyboard.press(target === slider ? 'ArrowRight' : '1');
  await page.waitForTimeout(QUIET_MS);
  return (await notesOf(page)).interaction;
}

const notesOf = (page: Page): Promise<PageNotes> =>
  page.evaluate(async () => {
    // Entries gathered so far come before the next frame but one.
    await new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve)));
    return Reflect.get(globalThis, 'pageNotes');
  });
