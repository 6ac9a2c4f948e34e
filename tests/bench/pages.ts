import { cpus, loadavg } from 'node:os';
import { type Browser, chromium } from 'playwright-core';
import { findChromium } from '@/tests/tools/findChromium.mjs';
import { median } from './measure';
import { firstScript } from './pages/firstScript';
import { openSlowLine } from './pages/slowLine';
import { type Machine, type Visit, visitPage } from './pages/visit';
import { servedApp } from './servedApp';

/*
 * npm run bench:pages [-- --json] [--runs 5] [--path /jobs] [--on phone] [--url http://127.0.0.1:3000]: what a visitor
 * waits for, on a first visit and on a later one, here and on a slow phone. Only the page's own thread can be slowed:
 * the sums run in a worker at the speed of this machine.
 */

const machines: readonly Machine[] = [
  { name: 'this machine', slower: 1, line: null },
  { name: 'phone', slower: 4, line: { bytesPerSecond: 1_600_000 / 8, roundTripMs: 150 } },
];
const UNBRAKED = { bytesPerSecond: 1e12, roundTripMs: 0 };
const paths = ['/', '/jobs', '/jobs/club-order', '/workshop'];

interface PageRow {
  readonly path: string;
  readonly machine: string;
  readonly visit: 'first' | 'later';
  readonly firstScript: number;
  readonly runs: readonly Visit[];
}

const option = (name: string): string | null => {
  const at = process.argv.indexOf(`--${name}`);
  return at < 0 ? null : (process.argv[at + 1] ?? null);
};
const runs = Number(option('runs') ?? 3);
const url = option('url');
// Helpers

async function measureAll(origin: string): Promise<readonly PageRow[]> {
  const executablePath = await findChromium();
  if (executablePath === undefined) throw new Error('No Chromium was found; CHROMIUM_PATH names one.');
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
  const done: PageRow[] = [];
  const wanted = machines.filter(({ name }) => name.includes(option('on') ?? ''));
  for (const machine of wanted) {
    for (const path of paths.filter((one) => one === (option('path') ?? one))) {
      done.push(...(await measurePage(browser, origin, { machine, path })));
    }
  }
  await browser.close();
  return done;
}

async function measurePage(
  browser: Browser,
  origin: string,
  { machine, path }: { readonly machine: Machine; readonly path: string },
): Promise<readonly PageRow[]> {
  const script = (await firstScript(origin, path)).reduce((sum, bytes) => sum + bytes, 0);
  const visits: { readonly first: Visit[]; readonly later: Visit[] } = { first: [], later: [] };
  for (let run = 0; run < runs; run += 1) {
    const line = await openSlowLine(new URL(origin), machine.line ?? UNBRAKED);
    const phone = machine.line !== null;
    // A profile that has never seen the page, then the same once more.
    const context = await browser.newContext({
      viewport: phone ? { width: 390, height: 844 } : { width: 1280, height: 900 },
      isMobile: phone,
      hasTouch: phone,
      locale: 'en-US',
    });
    for (const which of ['first', 'later'] as const) {
      visits[which].push(await visitPage(context, `${line.origin}${path}`, { machine, line }));
    }
    await context.close();
    line.close();
  }
  return (['first', 'later'] as const).map((visit) => ({
    path,
    machine: machine.name,
    visit,
    firstScript: script,
    runs: visits[visit],
  }));
}

const columns: readonly (readonly [string, (row: PageRow) => string])[] = [
  ['page', ({ path }) => path],
  ['on', ({ machine }) => machine],
  ['visit', ({ visit }) => visit],
  ['first paint s', ({ runs: all }) => seconds(all, 'firstPaint')],
  ['largest paint s', ({ runs: all }) => seconds(all, 'largestPaint')],
  ['price s', ({ runs: all }) => seconds(all, 'price')],
  ['first script kB gz', ({ firstScript: bytes }) => (bytes / 1000).toFixed(0)],
  ['scripts kB', ({ runs: all }) => (median(all.map((one) => one.scriptBytes)) / 1000).toFixed(0)],
  ['all kB', ({ runs: all }) => (median(all.map((one) => one.bytes)) / 1000).toFixed(0)],
  ['tasks > 50 ms', ({ runs: all }) => String(median(all.map((one) => one.longTasks.length)))],
  [
    '> 200 ms',
    ({ runs: all }) => String(median(all.map((one) => one.longTasks.filter((ms) => ms > 200).length))),
  ],
  ['longest ms', ({ runs: all }) => String(median(all.map((one) => Math.max(0, ...one.longTasks))))],
  ['shift', ({ runs: all }) => median(all.map((one) => one.shift)).toFixed(3)],
  [
    'edit ms',
    ({ runs: all }) =>
      known(
        all.map((one) => one.interaction),
        (ms) => ms.toFixed(0),
      ),
  ],
];
const WIDTHS = [18, 13, 6, 14, 16, 8, 19, 11, 8, 14, 9, 11, 6, 8];
const written = (cells: readonly string[]) =>
  cells.map((cell, at) => cell.padStart(WIDTHS[at] ?? 8)).join(' ');
const heading = written(columns.map(([name]) => name));

function lineOf(row: PageRow): string {
  const middle = row.runs.toSorted((a, b) => (a.largestPaint ?? 0) - (b.largestPaint ?? 0))[
    Math.floor(row.runs.length / 2)
  ];
  const slow = (middle?.slowFrames ?? []).toSorted((a, b) => b.ms - a.ms).slice(0, 3);
  const frames = slow.map(({ ms, script }) => `      a frame of ${ms} ms: ${script}`);
  const largest = `      painted largest: “${middle?.largest ?? ''}”`;
  return [written(columns.map(([, cell]) => cell(row))), largest, ...frames].join('\n');
}

function seconds(all: readonly Visit[], name: 'firstPaint' | 'largestPaint' | 'price'): string {
  return known(
    all.map((one) => one[name]),
    (ms) => (ms / 1000).toFixed(2),
  );
}

function known(values: readonly (number | null)[], write: (value: number) => string): string {
  const told = values.filter((value) => value !== null);
  // What some runs never came to is no median of the others.
  return told.length < values.length || told.length === 0 ? '–' : write(median(told));
}

const rows = url === null ? await servedApp(measureAll) : await measureAll(url);
if (rows === null) throw new Error('There is no build to measure: run `npm run build` first.');
const processor = cpus();
const place = `${processor.length} × ${processor[0]?.model ?? 'unknown'}, load ${loadavg()[0]?.toFixed(1)}, median of ${runs}`;
if (process.argv.includes('--json')) process.stdout.write(`${JSON.stringify({ place, rows }, null, 2)}\n`);
else process.stdout.write(`${[place, heading, ...rows.map(lineOf)].join('\n')}\n`);
