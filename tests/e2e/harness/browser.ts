import { type Browser, chromium } from 'playwright-core';
import { findChromium } from '@/tests/tools/findChromium.mjs';
import { type OutsideWatch, startOutsideWatch } from './outsideWatch';
import { stepLogger } from './steps';

interface Started {
  readonly browser: Browser;
  readonly outside: OutsideWatch;
}

export const FLAGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--disable-features=AutofillServerCommunication',
];

/** The port kept for discarding: nothing listens there. */
const NOWHERE = 'http://127.0.0.1:9';

let started: Promise<Started> | undefined;

/** The browser of this test file, started with its first page. */
export function browserOfFile(): Promise<Started> {
  started ??= start();
  return started;
}

export async function closeBrowser(): Promise<void> {
  if (started === undefined) return;
  const { browser, outside } = await started;
  await browser.close();
  outside.close();
  started = undefined;
}

async function start(): Promise<Started> {
  const executablePath = await findChromium();
  if (executablePath === undefined) {
    throw new Error('No Chromium was found. `npm test` installs one; or set CHROMIUM_PATH to its program.');
  }
  const outside = await startOutsideWatch();
  const browser = await chromium.launch({
    executablePath,
    args: FLAGS,
    logger: stepLogger,
    // The browser's own errands (updates, accounts) end here; pages get the watch instead.
    proxy: { server: NOWHERE, bypass: '127.0.0.1' },
  });
  return { browser, outside };
}
