import { mkdtemp, rm, stat, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Page } from 'playwright-core';
import sharp from 'sharp';
import { findChromium } from '@/tests/tools/findChromium.mjs';
import { peakOf } from './pages/processMemory';
import { servedApp } from './servedApp';

/*
 * npm run bench:transfers [-- --url http://127.0.0.1:3000] [--only P3]: the file to print with one picture in it: its size,
 * how long it takes, the page's longest task meanwhile, and what the browser's memory grows by at its peak.
 */

interface Row {
  readonly picture: string;
  readonly pictureMb: number;
  readonly fileMb: number;
  readonly seconds: number;
  readonly longestTaskMs: number;
  readonly memoryMb: number;
}

const grain = (width: number, height: number, sigma: number) =>
  sharp({
    create: { width, height, channels: 3, background: '#888', noise: { type: 'gaussian', mean: 128, sigma } },
  }).blur(1.2);

/** As photographs go: grain that packs to about the size a camera's files have. */
const pictures: readonly (readonly [string, string, () => Promise<Buffer>])[] = [
  ['JPEG, untagged', 'a.jpg', () => grain(2400, 3000, 85).jpeg({ quality: 92 }).toBuffer()],
  [
    'JPEG, tagged sRGB',
    'b.jpg',
    () => grain(2400, 3000, 85).withIccProfile('srgb').jpeg({ quality: 92 }).toBuffer(),
  ],
  ['PNG 3000 × 3600 with alpha', 'c.png', seeThrough],
  [
    'JPEG, Display P3, 12 MP',
    'd.jpg',
    () => grain(3120, 3900, 50).withIccProfile('p3').jpeg({ quality: 92 }).toBuffer(),
  ],
  [
    'JPEG, tagged sRGB, 48 MP',
    'e.jpg',
    () => grain(6240, 7800, 40).withIccProfile('srgb').jpeg({ quality: 92 }).toBuffer(),
  ],
];

async function seeThrough(): Promise<Buffer> {
  const circle = '<svg width="3000" height="3600"><ellipse cx="1500" cy="1800" rx="1400" ry="1700"/></svg>';
  const mask = await sharp(Buffer.from(circle)).extractChannel('alpha').blur(8).raw().toBuffer();
  const raw = { width: 3000, height: 3600, channels: 1 } as const;
  return grain(3000, 3600, 12).joinChannel(mask, { raw }).png().toBuffer();
}

const option = (name: string): string | null => {
  const at = process.argv.indexOf(`--${name}`);
  return at < 0 ? null : (process.argv[at + 1] ?? null);
};

const url = option('url');
const rows = url === null ? await servedApp(measureAll) : await measureAll(url);
if (rows === null) process.stdout.write('The app is not built: npm run build, then again.\n');
else {
  const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |\n`;
  process.stdout.write(
    line(['picture', 'MB', 'file MB', 'seconds', 'longest task ms', 'memory at the peak MB']),
  );
  process.stdout.write(line(['---', '---', '---', '---', '---', '---']));
  for (const row of rows) {
    const { picture, pictureMb, fileMb, seconds, longestTaskMs, memoryMb } = row;
    const figures = [pictureMb.toFixed(1), fileMb.toFixed(1), seconds.toFixed(2)];
    process.stdout.write(line([picture, ...figures, longestTaskMs.toFixed(0), memoryMb.toFixed(0)]));
  }
}

// Helpers

async function measureAll(origin: string): Promise<readonly Row[]> {
  const executablePath = await findChromium();
  if (executablePath === undefined) throw new Error('No Chromium was found; CHROMIUM_PATH names one.');
  const folder = await mkdtemp(join(tmpdir(), 'transfers-'));
  const done: Row[] = [];
  try {
    for (const [picture, name, make] of pictures) {
      if (!picture.includes(option('only') ?? '')) continue;
      const path = join(folder, name);
      await writeFile(path, await make());
      // A browser for each: none has what the one before left.
      const server = await chromium.launchServer({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
      const browser = await chromium.connect(server.wsEndpoint());
      const page = await browser.newPage({ baseURL: origin, viewport: { width: 1280, height: 900 } });
      page.setDefaultTimeout(90_000);
      try {
        done.push(await measure(page, { picture, path, pid: server.process().pid ?? 0 }));
      } finally {
        await server.close();
      }
    }
  } finally {
    await rm(folder, { recursive: true });
  }
  return done;
}

async function measure(
  page: Page,
  { picture, path, pid }: { readonly picture: string; readonly path: string; readonly pid: number },
): Promise<Row> {
  await page.goto('/');
  await page.getByRole('slider').first().waitFor();
  const job = page.getByRole('region', { name: 'The job', exact: true });
  await job.getByRole('button', { name: /^Back picture/ }).click();
  await job.getByLabel('Picture file of Hill path picture').setInputFiles(path);
  const sheets = page.getByRole('region', { name: 'Sheets', exact: true });
  await sheets.locator('image').first().waitFor({ state: 'attached' });
  await sheets.getByRole('button', { name: /^Sheets to print/ }).click();
  const each = sheets.getByRole('button', { name: /^One of each, \d+ pages/ });
  await each.waitFor();
  // What taking the picture in stirred up has settled.
  await page.waitForTimeout(3_000);
  await page.evaluate(() => {
    const tasks: number[] = [];
    Reflect.set(globalThis, 'tasks', tasks);
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) tasks.push(duration);
    }).observe({ type: 'longtask' });
  });
  const memory = peakOf(pid);
  const begun = performance.now();
  const [download] = await Promise.all([page.waitForEvent('download'), each.click()]);
  const seconds = (performance.now() - begun) / 1000;
  const file = `${path}.pdf`;
  await download.saveAs(file);
  const memoryMb = memory.end() / 1e6;
  await page.waitForTimeout(200);
  const tasks = await page.evaluate(() => Reflect.get(globalThis, 'tasks') as readonly number[]);
  return {
    picture,
    pictureMb: (await stat(path)).size / 1e6,
    fileMb: (await stat(file)).size / 1e6,
    seconds,
    longestTaskMs: Math.max(0, ...tasks),
    memoryMb,
  };
}
