import type { BrowserContext, Page } from 'playwright-core';
import { inject } from 'vitest';
import { FIXED_DAY } from '@/tests/tools/clock/testDay';
import { browserOfFile } from './browser';
import { STEP_MS } from './patience.mjs';
import { watchContext } from './problems';
import { setClock } from './setClock';

export interface PageOptions {
  /** In CSS pixels; below 600 the page is a phone's: touch, and its own viewport rules. */
  readonly width?: number;
  readonly scheme?: 'light' | 'dark';
  /** Opened at once; '/' unless told. */
  readonly path?: string;
  /** Language of the device, by which a first visit guesses money and units; of the United States unless told. */
  readonly locale?: string;
  /** A page already open: the new one shares its storage, as a second tab does. */
  readonly beside?: Page;
  /**
   * Address of another server than the one of the run. Its pages are kept on the device by the service worker; those
   * of the run's are not, so that every test sees what its own requests bring.
   */
  readonly keptFrom?: string;
}

const PHONE_BELOW_PX = 600;

const contexts = new Set<BrowserContext>();

/**
 * Opens a page of the app in a browser that has never seen it. Whatever goes wrong on it (a request to another
 * host, a refusal by the content policy, an error) fails the test at its end.
 */
export async function openPage(options: PageOptions = {}): Promise<Page> {
  const { path = '/', beside } = options;
  const context = beside?.context() ?? (await freshContext(options));
  const page = await context.newPage();
  await page.goto(path);
  return page;
}

/** Every page a test has open. */
export const openPages = (): readonly Page[] => [...contexts].flatMap((context) => context.pages());

export async function closePages(): Promise<void> {
  const open = [...contexts];
  contexts.clear();
  await Promise.all(open.map(closeContext));
}

/** A page goes on fetching until it is closed; what a test puts in the way of that then has nothing to answer. */
async function closeContext(context: BrowserContext): Promise<void> {
  const routed = [context, ...context.pages()];
  await Promise.all(routed.map((one) => one.unrouteAll({ behavior: 'ignoreErrors' })));
  await context.close();
}

async function freshContext({
  width = 1280,
  scheme = 'light',
  locale = 'en-US',
  keptFrom,
}: PageOptions): Promise<BrowserContext> {
  const { browser, outside } = await browserOfFile();
  const isPhone = width < PHONE_BELOW_PX;
  const baseURL = keptFrom ?? inject('baseUrl');
  const context = await browser.newContext({
    baseURL,
    proxy: { server: outside.url, bypass: '127.0.0.1' },
    viewport: { width, height: isPhone ? 844 : 900 },
    hasTouch: isPhone,
    isMobile: isPhone,
    colorScheme: scheme,
    // Pictures and clicks are not to depend on the moment of a movement.
    reducedMotion: 'reduce',
    locale,
    timezoneId: 'UTC',
    serviceWorkers: keptFrom === undefined ? 'block' : 'allow',
  });
  contexts.add(context);
  context.setDefaultTimeout(STEP_MS);
  await setClock(context, `${FIXED_DAY}T09:00:00Z`);
  await watchContext(context, baseURL);
  return context;
}
