import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { expectPriceBar, filled, section } from '@/tests/e2e/harness/docketPage';
import { pointer } from '@/tests/e2e/harness/hands';
import { openPage } from '@/tests/e2e/harness/openPage';
import { issue, note } from '@/tests/e2e/harness/orderRoom';
import { MOST_SHIFT, takePace, watchPace } from '@/tests/e2e/harness/pace';

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
    // At once: on the way to it would stand a 2, which is under the floor, and a stop moves the page by right.
    await price.fill('21');
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

test.each([
  ['/orders', 1280],
  ['/orders', 390],
  ['/orders/club-enquiry', 1280],
  ['/orders/club-enquiry', 390],
  ['/customers/ramblers-club', 390],
])('hardly anything moves on %s at %d px while it fills', async (path, width) => {
  const page = await openPage({ width, path: '/api/schema' });
  await watchPace(page);
  await page.goto(path);
  await page.getByRole('heading', { level: 1 }).waitFor();
  await page.waitForLoadState('networkidle');
  await expect.poll(() => page.locator('main [aria-busy="true"]').count()).toBe(0);
  const { shift, moved, longTasks } = await takePace(page);
  process.stdout.write(
    `${path} at ${width} px: moved ${shift.toFixed(4)} while loading; tasks over 50 ms [${longTasks.slice(0, 5).join(' ')}]\n`,
  );
  expect(shift, moved.join('\n')).toBeLessThan(MOST_SHIFT);
});

test('an order is quoted and accepted without holding the page', async () => {
  const page = await openPage({ path: '/api/schema' });
  await watchPace(page);
  await page.goto('/orders/club-enquiry');
  await page.getByRole('tabpanel').getByText('deposit 380.66').first().waitFor();
  // A quote bears the number of its order.
  await page.getByRole('button', { name: 'Give it one' }).click();
  await takePace(page);
  await issue(page, pointer, 'Quote', 'quote');
  const issuing = await takePace(page);
  await note(page, pointer, /^Accepted: /);
  const noting = await takePace(page);
  const told = [issuing, noting].map(({ longTasks }) => longTasks.slice(0, 5).join(' '));
  process.stdout.write(
    `an order: tasks over 50 ms while its quote is issued [${told[0]}], while the yes is noted [${told[1]}]\n`,
  );
});
