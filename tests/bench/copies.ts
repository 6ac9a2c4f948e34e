import { stat } from 'node:fs/promises';
import { type CDPSession, chromium, type Page } from 'playwright-core';
import former from '@/tests/fixtures/stored/storeBeforeEntries.json' with { type: 'json' };
import { findChromium } from '@/tests/tools/findChromium.mjs';
import { servedApp } from './servedApp';

/*
 * npx tsx tests/bench/copies.ts [files] [MB each]: what a copy with many pictures asks of the page that makes it and of
 * the page that takes it in: how long, the longest task, and the most memory that scripts held. 60 files of 4 MB unless
 * told.
 */

const [files = 60, megabytes = 4] = process.argv.slice(2).map(Number);

interface Measured {
  readonly seconds: number;
  readonly longestTaskMs: number;
  readonly tasksOver50Ms: number;
  /** Of scripts and of the bytes they hold, above what was there before. */
  readonly peakHeapMB: number;
}

async function measureCopies(origin: string): Promise<readonly string[]> {
  const executablePath = await findChromium();
  if (executablePath === undefined) throw new Error('No Chromium was found; CHROMIUM_PATH names one.');
  const browser = await chromium.launch({
    executablePath,
    args: ['--no-sandbox', '--disable-gpu', '--enable-precise-memory-info'],
  });
  try {
    const from = await opened(
      await (await browser.newContext({ serviceWorkers: 'block' })).newPage(),
      origin,
    );
    await fillWithPictures(from);
    await from.reload();
    await kept(from);
    const button = from.locator('main').getByRole('button', { name: 'Make a copy', exact: true });
    let path = '';
    const making = await measured(from, async () => {
      const [download] = await Promise.all([
        from.waitForEvent('download', { timeout: 200_000 }),
        button.click(),
      ]);
      path = await download.path();
    });
    const { size } = await stat(path);
    const to = await opened(await (await browser.newContext({ serviceWorkers: 'block' })).newPage(), origin);
    const take = to
      .locator('main')
      .getByRole('button', { name: /^(?:Bring|Take) (?:it|them|the .+) (?:in|back|over)$/ });
    const looking = await measured(to, async () => {
      await to.getByLabel('Copy or carried file').setInputFiles(path);
      await take.waitFor({ timeout: 200_000 });
    });
    const taking = await measured(to, async () => {
      await take.click();
      await to
        .getByText(/came in/)
        .first()
        .waitFor({ timeout: 200_000 });
    });
    return [
      `${files} files of ${megabytes} MB; the copy is ${(size / 1e6).toFixed(0)} MB`,
      lineOf('making it', making),
      lineOf('looking at it', looking),
      lineOf('taking it in', taking),
    ];
  } finally {
    await browser.close();
  }
}

async function opened(page: Page, origin: string): Promise<Page> {
  page.setDefaultTimeout(60_000);
  await page.addInitScript(() => {
    const tasks: number[] = [];
    Reflect.set(window, 'longTasks', tasks);
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) tasks.push(duration);
    }).observe({ type: 'longtask' });
  });
  await page.goto(`${origin}/workshop#copies`);
  await kept(page);
  return page;
}

const kept = (page: Page): Promise<void> => page.getByText(/^Kept/).first().waitFor();

/** Artworks with a picture each, put past the app: it would take minutes to read so many. */
async function fillWithPictures(page: Page): Promise<void> {
  await page.evaluate(
    async ([count, bytes, known]) => {
      const db = await new Promise<IDBDatabase>((resolve, reject) => {
        const request = indexedDB.open('pressminute');
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
      const example = await new Promise<Record<string, unknown>>((resolve, reject) => {
        const request = db.transaction('documents').objectStore('documents').getAll();
        request.onsuccess = () => resolve(request.result.find(({ kind }) => kind === 'artwork'));
        request.onerror = () => reject(request.error);
      });
      for (let at = 0; at < count; at += 1) {
        const content = new Uint8Array(bytes);
        for (let from = 0; from < bytes; from += 65_536)
          crypto.getRandomValues(content.subarray(from, Math.min(bytes, from + 65_536)));
        const hash = new Uint8Array(await crypto.subtle.digest('SHA-256', content));
        const id = [...hash].map((byte) => byte.toString(16).padStart(2, '0')).join('');
        const picture = { ...known, fileId: id, fileName: `picture-${at}.png`, bytes };
        const body = example.body as Record<string, unknown>;
        const writing = db.transaction(['files', 'documents'], 'readwrite');
        writing.objectStore('files').put({ id, name: picture.fileName, content: new Blob([content]) });
        writing.objectStore('documents').put({
          ...example,
          id: `picture-${at}`,
          body: { ...body, name: `Picture ${at}`, picture },
        });
        await new Promise((resolve, reject) => {
          writing.oncomplete = resolve;
          writing.onerror = reject;
        });
      }
      db.close();
    },
    [files, Math.round(megabytes * 1024 * 1024), pictureOfFixture()] as const,
  );
}

const pictureOfFixture = (): object =>
  former.tables.documents.flatMap(({ body }) => ('picture' in body ? (body.picture ?? []) : []))[0] ?? {};

async function measured(page: Page, act: () => Promise<void>): Promise<Measured> {
  const session = await page.context().newCDPSession(page);
  await page.evaluate(() => Reflect.get(window, 'longTasks').splice(0));
  const before = await heldBytes(session);
  let peak = before;
  let isDone = false;
  const watching = (async () => {
    while (!isDone) {
      peak = Math.max(peak, await heldBytes(session));
      await new Promise((resolve) => setTimeout(resolve, 50));
    }
  })();
  const begun = performance.now();
  await act();
  const seconds = (performance.now() - begun) / 1000;
  isDone = true;
  await watching;
  const tasks: readonly number[] = await page.evaluate(() => Reflect.get(window, 'longTasks'));
  return {
    seconds,
    longestTaskMs: Math.max(0, ...tasks),
    tasksOver50Ms: tasks.length,
    peakHeapMB: (peak - before) / 1e6,
  };
}

/** Bytes of arrays lie beside the heap of scripts. */
async function heldBytes(session: CDPSession): Promise<number> {
  const usage: { usedSize: number; backingStorageSize?: number } = await session.send('Runtime.getHeapUsage');
  return usage.usedSize + (usage.backingStorageSize ?? 0);
}

const lineOf = (what: string, { seconds, longestTaskMs, tasksOver50Ms, peakHeapMB }: Measured): string =>
  `${what.padEnd(14)} ${seconds.toFixed(1).padStart(6)} s   longest task ${longestTaskMs.toFixed(0)} ms (${tasksOver50Ms} over 50)   peak ${peakHeapMB.toFixed(0)} MB more`;

const lines = await servedApp(measureCopies);
console.log(lines === null ? 'There is no build: npm run build first.' : lines.join('\n'));
