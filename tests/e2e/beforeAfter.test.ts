import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { filled } from '@/tests/e2e/harness/docketPage';
import { measurePage } from '@/tests/e2e/harness/measurePage';
import { openPage } from '@/tests/e2e/harness/openPage';

interface Row {
  readonly what: string;
  /** As counted by hand before the docket answered first and a start was made of pictures; null: never counted. */
  readonly before: number | null;
  readonly now: number;
  readonly most: number;
}

const WIDTHS = [
  { width: 1280, beforePx: 8_060, mostPx: 3_400 },
  { width: 390, beforePx: 16_400, mostPx: 6_500 },
] as const;
const WORDS = { before: 3_300, most: 1_100 };
/** The stops are many still, because each field and each fold is one; a table is one. */
const STOPS = { before: 221, most: 130 };
const FIRST = [
  { thing: 'Shirts', before: 4 },
  { thing: 'Mugs', before: 20 },
] as const;
const MOST_ACTIONS = 8;

async function docketRows({ width, beforePx, mostPx }: (typeof WIDTHS)[number]): Promise<readonly Row[]> {
  const page = await openPage({ width });
  await filled(page);
  const { heightPx, words, tabStops } = await measurePage(page);
  return [
    { what: `docket at ${width} px: height, px`, before: beforePx, now: heightPx, most: mostPx },
    { what: `docket at ${width} px: words`, ...WORDS, now: words },
    {
      what: `docket at ${width} px: stops of the Tab key`,
      most: STOPS.most,
      // Only the wide page was counted.
      before: width === 1280 ? STOPS.before : null,
      now: tabStops,
    },
  ];
}

/** Presses from the front door to a price of one's own. */
async function actionsToPrice(page: Page, thing: string): Promise<number> {
  const presses = [
    page.getByRole('link', { name: /start your own workshop/i }).first(),
    page.locator('label', { hasText: thing }).first(),
  ];
  for (const target of presses) await target.click();
  await page.getByRole('region', { name: 'Price', exact: true }).getByText('would pay you').waitFor();
  return presses.length;
}

async function startRows(width: number): Promise<readonly Row[]> {
  const rows: Row[] = [];
  for (const { thing, before } of FIRST) {
    const page = await openPage({ width });
    rows.push({
      what: `actions to a first price of ${thing.toLowerCase()} at ${width} px`,
      before,
      now: await actionsToPrice(page, thing),
      most: MOST_ACTIONS,
    });
  }
  return rows;
}

const figure = (value: number | null) => (value?.toLocaleString('en') ?? '–').padStart(8);

const tableOf = (rows: readonly Row[]) =>
  [
    `${''.padEnd(52)}  before     now    most`,
    ...rows.map(
      ({ what, before, now, most }) => `${what.padEnd(50)}${figure(before)}${figure(now)}${figure(most)}`,
    ),
  ].join('\n');

test('the docket and the way to a first price are far shorter than they were, as a table of both tells', async () => {
  const rows: Row[] = [];
  for (const one of WIDTHS) rows.push(...(await docketRows(one)), ...(await startRows(one.width)));
  process.stdout.write(`${tableOf(rows)}\n`);
  for (const { what, before, now, most } of rows) {
    expect.soft(now, what).toBeGreaterThan(0);
    expect.soft(now, what).toBeLessThanOrEqual(most);
    if (before !== null) expect.soft(now, `${what}, against before`).toBeLessThan(before);
  }
});
