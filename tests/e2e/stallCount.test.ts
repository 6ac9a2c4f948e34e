import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import type { Tap } from '@/shared/schemas/stallEvents';
import type { StallPlan } from '@/shared/schemas/stallPapers';
import { bringIn, savedFile, take } from '@/tests/e2e/harness/copyFiles';
import { roomOn } from '@/tests/e2e/harness/deviceRoom';
import { keyboard } from '@/tests/e2e/harness/hands';
import { QUIET } from '@/tests/e2e/harness/keptStore';
import { looksRight, scrollsNowhere } from '@/tests/e2e/harness/looksRight';
import { lowestContrast } from '@/tests/e2e/harness/lowestContrast';
import { openPage } from '@/tests/e2e/harness/openPage';
import { COUNT, layPlan, layTaps, tapsOn } from '@/tests/e2e/harness/stallShelf';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { saleOf } from '@/tests/fixtures/stallTaps';

/** A device with a plan on it, at the count. */
async function counting(width: number, plan?: StallPlan, taps: readonly Tap[] = []): Promise<Page> {
  const page = await openPage({ width, path: '/workshop' });
  await page.getByRole('heading', { level: 1 }).waitFor();
  await page.goto(QUIET);
  await layPlan(page, plan);
  if (taps.length > 0) await layTaps(page, taps);
  await page.goto(COUNT);
  await page.getByRole('heading', { level: 1, name: fairPlan.title }).waitFor();
  return page;
}

const tile = (page: Page, name: string) => page.getByRole('button', { name: new RegExp(`^${name}, `) });

/** Every button of the page that is seen, with its box. */
const buttonBoxes = (page: Page) =>
  page.locator('[data-stall-count] button').evaluateAll((buttons) =>
    buttons.map((button) => {
      const { width, height } = button.getBoundingClientRect();
      return { name: button.textContent, width, height };
    }),
  );

test.each([1280, 390, 320])('the count looks right at %d px, and can be read in the sun', async (width) => {
  const page = await counting(width);
  /** Tops of the tiles on the page and the height of the first key, whole px: nothing may move under a thumb that taps. */
  const places = () =>
    page.locator('[data-stall-count]').evaluate((count) => ({
      tiles: [...count.querySelectorAll('section button')].map((one) => (one as HTMLElement).offsetTop),
      key: Math.round(
        [...count.querySelectorAll('button')]
          .find(({ textContent }) => textContent?.startsWith('Asked for'))
          ?.getBoundingClientRect().height ?? 0,
      ),
    }));
  const before = await places();
  await tile(page, 'Star Map 3XL').click();
  await tile(page, 'Star Map 3XL').click();
  const soldEvenSo = page.getByRole('button', { name: 'Sold one all the same' });
  await soldEvenSo.waitFor();
  expect(await places()).toEqual(before);
  await looksRight(page, 'stall-count-gone');
  expect((await soldEvenSo.boundingBox())?.height, 'height of Sold one all the same').toBeGreaterThanOrEqual(
    56,
  );
  await soldEvenSo.click();
  await tile(page, 'Star Map 3XL').click();
  await page
    .getByRole('button', { name: 'Star Map 3XL, 1 more than brought: count as asked for, so far 1' })
    .waitFor();
  expect(await places()).toEqual(before);
  await tile(page, 'Otter L').click();
  await looksRight(page, 'stall-count');
  for (const { name, width: across, height } of await buttonBoxes(page)) {
    expect(across, `width of ${name}`).toBeGreaterThanOrEqual(56);
    expect(height, `height of ${name}`).toBeGreaterThanOrEqual(56);
  }
  const open = async (button: RegExp, sheet: string) => {
    await page.getByRole('button', { name: button }).click();
    await page.getByRole('dialog', { name: sheet }).waitFor();
    await page.getByRole('dialog').locator('h3, summary').first().waitFor();
    for (const fold of await page.getByRole('dialog').locator('summary').all()) await fold.click();
    await looksRight(page, `stall-count-${sheet.split(',')[0]?.toLowerCase()}`);
    await contrastHolds();
    await page.getByRole('button', { name: 'Close' }).click();
  };
  const contrastHolds = async () => {
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
      const { ratio, words } = await lowestContrast(page);
      expect(ratio, `${words} by ${colorScheme}`).toBeGreaterThanOrEqual(7);
    }
  };
  await contrastHolds();
  await open(/^More$/, 'More');
  await open(/^Asked for, not here/, 'Asked for, not here');
  await tile(page, 'Fern L').click({ button: 'right' });
  await page.getByRole('dialog', { name: 'Fern L' }).getByText('Exchange').waitFor();
  await looksRight(page, 'stall-count-piece');
  await contrastHolds();
});

test('twelve sizes wrap into rows at 320 px, and the page scrolls down, never sideways', async () => {
  const [first] = fairPlan.goods;
  if (first === undefined) throw new Error('the fair has no goods');
  const sizes = ['2-3 Y', '4-5 Y', '6-7 Y', '8-9 Y', 'XS', 'S', 'M', 'L', 'XL', '2XL', '3XL', '4XL'];
  const page = await counting(320, { ...fairPlan, goods: sizes.map((size) => ({ ...first, size })) });
  const row = page.getByRole('region', { name: 'Fern' });
  await expect.poll(() => row.getByRole('button').count()).toBe(12);
  const tops = await row
    .getByRole('button')
    .evaluateAll((buttons) => buttons.map((button) => Math.round(button.getBoundingClientRect().top)));
  expect(new Set(tops).size).toBeGreaterThan(1);
  for (const { name, width, height } of await buttonBoxes(page))
    expect(Math.min(width, height), name ?? '').toBeGreaterThanOrEqual(56);
  await scrollsNowhere(page);
});

test('six sizes stand in one line at 390 px and in two alike at 320 px, and the keys leave the goods their room', async () => {
  for (const [width, lines, keysAtMost] of [
    [390, 1, 150],
    [320, 2, 170],
  ] as const) {
    const page = await counting(width);
    const row = page.getByRole('region', { name: 'Fern' }).getByRole('button');
    const tops = await row.evaluateAll((all) => all.map((one) => one.getBoundingClientRect().top));
    const counts = [...new Set(tops)].map((top) => tops.filter((one) => one === top).length);
    expect(counts).toEqual(Array.from({ length: lines }, () => 6 / lines));
    const next = page.getByRole('button', { name: /^Next customer/ });
    const [undo, cash, last] = await Promise.all(
      [page.getByRole('button', { name: /^Undo/ }), page.getByRole('button', { name: 'Cash' }), next].map(
        (key) => key.boundingBox(),
      ),
    );
    expect([undo?.y, cash?.y]).toEqual([last?.y, last?.y]);
    const keys = await next.evaluate(
      (key) => key.parentElement?.parentElement?.getBoundingClientRect().height,
    );
    expect(keys).toBeLessThanOrEqual(keysAtMost);
  }
});

test('the keys stand for the hand that taps: the next customer outermost, right or left, and after a reload too', async () => {
  const page = await counting(390);
  /** Each row of the foot from left to right, the names of its keys. */
  const rows = async () => {
    const foot = page.getByRole('button', { name: /^Next customer/ }).locator('xpath=../..');
    const keys = await foot.getByRole('button').evaluateAll((all) =>
      all.map((key) => {
        const { top, left, right } = key.getBoundingClientRect();
        return { name: key.textContent ?? '', top: Math.round(top), left, right };
      }),
    );
    const tops = [...new Set(keys.map(({ top }) => top))].toSorted((one, other) => one - other);
    return tops.map((top) => keys.filter((key) => key.top === top).toSorted((a, b) => a.left - b.left));
  };
  const names = async () =>
    (await rows()).map((row) => row.map(({ name }) => /^(Asked|More|Cash|Card|Undo|Next)/.exec(name)?.[1]));
  const edges = async () =>
    (await rows()).map((row) => [Math.round(row[0]?.left ?? 0), Math.round(390 - (row.at(-1)?.right ?? 0))]);
  expect(await names()).toEqual([
    ['Asked', 'More'],
    ['Cash', 'Card', 'Undo', 'Next'],
  ]);
  const right = await edges();
  await page.getByRole('button', { name: 'More' }).tap();
  const sheet = page.getByRole('dialog', { name: 'More' });
  await sheet.getByText('This phone').tap();
  await sheet.getByRole('button', { name: 'Keys for the left hand' }).tap();
  await sheet.getByRole('button', { name: 'Close' }).tap();
  const mirrored = [
    ['More', 'Asked'],
    ['Next', 'Undo', 'Cash', 'Card'],
  ];
  expect(await names()).toEqual(mirrored);
  // As far from either edge as before.
  expect(await edges()).toEqual(right);
  await page.reload();
  await expect.poll(names).toEqual(mirrored);
});

test('on a full disk the taps stay on the screen, are told and saved as a file, and are kept once there is room', async () => {
  const page = await counting(390);
  await tile(page, 'Fern M').tap();
  await page.getByText(/^no signal needed · kept/).waitFor();
  const room = await roomOn(page);
  await room.fill();
  await tile(page, 'Fern M').tap();
  await tile(page, 'Otter L').tap();
  const alarm = page.getByRole('alert').filter({ hasText: 'Not kept.' });
  await alarm.waitFor();
  await page.getByText('3 sold').waitFor();
  await looksRight(page, 'stall-count-full-disk');
  const file = await savedFile(page, alarm.getByRole('button', { name: 'Carry to another device' }));
  const other = await openPage({ path: '/workshop#copies' });
  await bringIn(other, file);
  await take(other).click();
  await expect.poll(() => take(other).count()).toBe(0);
  await other.goto(COUNT);
  await other.getByText('3 sold').waitFor();
  await room.free();
  await page.getByRole('button', { name: 'Try again' }).click();
  await page.getByText(/^no signal needed · kept/).waitFor();
  await page.reload();
  await page.getByText('3 sold').waitFor();
});

test('two plans of one fair are told in one line, and which is counted by unfolds', async () => {
  const page = await counting(390);
  await page.goto(QUIET);
  await layPlan(page, { ...fairPlan, title: 'The later plan' }, { device: 'thirddevice0', laterMs: 60_000 });
  await page.goto(COUNT);
  await page.getByRole('heading', { level: 1, name: 'The later plan' }).waitFor();
  await page.getByText('Two plans are fixed for this day.').tap();
  await page.getByText(/^Two devices fixed a plan for this day\. The count goes by the newest/).waitFor();
  await tile(page, 'Fern M').tap();
  await page.getByText('1 sold').waitFor();
});

test('a customer is served with the keyboard alone, and another price taken from the menu key', async () => {
  const page = await counting(1280);
  await keyboard.press(tile(page, 'Otter L'));
  await page.keyboard.press('Shift+F10');
  await page.getByRole('dialog', { name: 'Otter L' }).getByRole('textbox', { name: 'Other price' }).waitFor();
  await keyboard.type(page.getByRole('textbox', { name: 'Other price' }), '20');
  await keyboard.press(page.getByRole('button', { name: 'Sell at it' }));
  await expect.poll(() => tile(page, 'Otter L').evaluate((one) => one === document.activeElement)).toBe(true);
  await keyboard.press(page.getByRole('button', { name: 'Cash' }));
  await keyboard.press(page.getByRole('button', { name: /^Next customer ?2 for 48$/ }));
  await page.getByRole('button', { name: /^Next customer ?nothing yet$/ }).waitFor();
  await keyboard.press(page.getByRole('button', { name: /^Undo ?Next customer$/ }));
  await page.getByRole('button', { name: /^Next customer ?2 for 48$/ }).waitFor();
});

test('with 2,000 sales in the day each tap still counts, one upon the other', async () => {
  const plenty = { ...fairPlan, goods: fairPlan.goods.map((goods) => ({ ...goods, bring: 1000 })) };
  const sold = Array.from({ length: 3000 }, (_, at): Tap => {
    const goods = plenty.goods[at % plenty.goods.length];
    return at % 3 === 2 || goods === undefined ? { what: 'next' } : saleOf(goods);
  });
  const page = await counting(390, plenty, sold);
  await page.getByText('2000', { exact: true }).waitFor();
  const button = page.getByRole('button', { name: /^Fern S, / });
  const left = Number(/(\d+) left/.exec((await button.textContent()) ?? '')?.[1]);
  await button.evaluate((one) => {
    for (let tap = 0; tap < 30; tap += 1) if (one instanceof HTMLElement) one.click();
  });
  await page.getByText('2030', { exact: true }).waitFor();
  await page.getByRole('button', { name: `Fern S, 28, ${left - 30} left` }).waitFor();
  await page.getByText(/^no signal needed · kept/).waitFor();
  expect(await tapsOn(page)).toEqual(Array(30).fill('sale'));
});

test.each([1280, 390, 320])(
  'marks of the bar are named apart and led to where they stand: %d px',
  async (width) => {
    const page = await counting(width);
    const labels = await page.locator('[data-stall-count] svg g').evaluateAll((groups) =>
      groups.map((group) => {
        const leader = group.querySelector('line')?.getBoundingClientRect();
        const lines = [...group.querySelectorAll('text')].map((text) => text.getBoundingClientRect());
        return {
          from: Math.min(...lines.map(({ left }) => left)),
          to: Math.max(...lines.map(({ right }) => right)),
          isLed:
            leader !== undefined &&
            lines.every(({ left, right }) => leader.left < right && leader.right > left),
        };
      }),
    );
    expect(labels).toHaveLength(4);
    expect(labels.every(({ isLed }) => isLed)).toBe(true);
    for (const [at, { from, to }] of labels.entries()) {
      expect(from).toBeGreaterThan(labels[at - 1]?.to ?? 0);
      expect(to).toBeLessThanOrEqual(width);
    }
  },
);
