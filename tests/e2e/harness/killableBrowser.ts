import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { type Browser, chromium, type Page } from 'playwright-core';
import { findChromium } from '@/tests/tools/findChromium.mjs';
import { FLAGS } from './browser';
import { STEP_MS } from './patience.mjs';

/** A browser with a profile on the disk that can be ended as a power cut ends it. */
export interface KillableBrowser {
  readonly page: Page;
  /** Ends every process of the browser at once, without a word to any of them. */
  readonly kill: () => Promise<void>;
}

/** Starts a browser on a profile folder, as it was left by the one before. */
export async function startKillable(profile: string): Promise<KillableBrowser> {
  const executable = await findChromium();
  if (executable === undefined) throw new Error('No Chromium was found.');
  const child = spawn(
    executable,
    [
      ...FLAGS,
      '--headless',
      '--remote-debugging-port=0',
      `--user-data-dir=${profile}`,
      '--lang=en-US',
      'about:blank',
    ],
    // A group of its own, so that all of its processes end together and none of anybody else's.
    { detached: true, stdio: ['ignore', 'ignore', 'pipe'], env: { ...process.env, LANGUAGE: 'en_US' } },
  );
  const end = async (): Promise<void> => {
    const ended = child.exitCode === null && child.signalCode === null ? once(child, 'exit') : null;
    if (child.pid !== undefined) process.kill(-child.pid, 'SIGKILL');
    await ended;
  };
  const browser: Browser = await chromium.connectOverCDP(await debuggerAddress(child), { timeout: STEP_MS });
  const [context] = browser.contexts();
  if (context === undefined) throw new Error('The browser has no window.');
  context.setDefaultTimeout(STEP_MS);
  return { page: context.pages()[0] ?? (await context.newPage()), kill: end };
}

/** Listened to until the end: a browser whose words nobody takes in stands still. */
const debuggerAddress = (child: ChildProcess): Promise<string> =>
  new Promise((resolve, reject) => {
    let said = '';
    child.stderr?.on('data', (chunk) => {
      said = (said + String(chunk)).slice(-10_000);
      const [, address] = /DevTools listening on (ws:\S+)/.exec(said) ?? [];
      if (address !== undefined) resolve(address);
    });
    child.once('exit', () => reject(new Error(`The browser did not start: ${said}`)));
  });
