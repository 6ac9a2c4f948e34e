import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { expectPriceBar, filled, section, type } from '@/tests/e2e/harness/docketPage';
import { openPage } from '@/tests/e2e/harness/openPage';
import { takePace, watchPace } from '@/tests/e2e/harness/pace';

/** A fifth of what counts as a page that stands still: 0.1 is the limit in common use. */
const MOST_SHIFT = 0.02;

async function opened(width: number): Promise<Page> {
  // The first page only lends its window.
  const page = await openPage({ width, path: '/api/schema' });
  await watchPace(page);
  await page.goto('/');
  await filled(page);
  return page;
}

test.each([1280, 390])(
  'hardly anything moves at %d px while the docket fills and while a price is typed',
  async (width) => {
    const page = await opened(width);
    const loading = await takePace(page);
    const price = section(page, 'The job').getByRole('textbox', { name: 'Price of a shirt', exact: true });
    await price.scrollIntoViewIfNeeded();
    await type(price, '21');
    await expectPriceBar(page, /21\.00.*margin 4[56]/);
    await page.waitForLoadState('networkidle');
    const typing = await takePace(page);
    const told = [loading, typing].map(({ longTasks }) => longTasks.slice(0, 5).join(' '));
    process.stdout.write(
      `at ${width} px: moved ${loading.shift.toFixed(4)} while loading, ${typing.shift.toFixed(4)} while typing; tasks over 50 ms while loading [${told[0]}], while typing [${told[1]}]\n`,
    );
    expect.soft(loading.shift, loading.moved.join('\n')).toBeLessThan(MOST_SHIFT);
    expect.soft(typing.shift, typing.moved.join('\n')).toBeLessThan(MOST_SHIFT);
  },
);
