import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { springFairTaps } from '@/lib/examples/springFairCount';
import type { Tap } from '@/shared/schemas/stallEvents';
import { QUIET } from '@/tests/e2e/harness/keptStore';
import { looksRight } from '@/tests/e2e/harness/looksRight';
import { openPage } from '@/tests/e2e/harness/openPage';
import { MOST_SHIFT, takePace, watchPace } from '@/tests/e2e/harness/pace';
import { EVENING, layPlan, layTaps } from '@/tests/e2e/harness/stallShelf';
import { unfoldAll } from '@/tests/e2e/harness/unfoldAll';
import { fairPlan } from '@/tests/fixtures/stallPlan';

/** A device with the worked fair counted on it, in the evening. */
async function evening(width: number, more: readonly Tap[] = []): Promise<Page> {
  const page = await openPage({ width, path: '/workshop' });
  await page.getByRole('heading', { level: 1 }).waitFor();
  await page.goto(QUIET);
  await layPlan(page);
  await layTaps(page, [...springFairTaps().map(({ tap }) => tap), ...more]);
  await page.goto(EVENING);
  await page.getByRole('heading', { level: 1, name: `${fairPlan.title}, the evening` }).waitFor();
  return page;
}

const lead: Tap = { what: 'lead', words: 'Ten shirts for the choir' };

test.each([1280, 390, 320])(
  'the evening looks right from the first look to the close, at %d px',
  async (width) => {
    const page = await evening(width, [lead]);
    await looksRight(page, 'stall-evening');
    await page.getByRole('textbox', { name: /^All that is in the tin/ }).fill('530');
    await page.getByRole('radio', { name: 'Wrong change' }).check();
    await page.getByRole('button', { name: 'All is as it should be' }).click();
    expect(await unfoldAll(page)).toBeGreaterThan(3);
    await page
      .getByRole('group', { name: 'Fern, left' })
      .getByRole('textbox', { name: 'M', exact: true })
      .fill('2');
    await page.getByText('1 Fern M missing').waitFor();
    await looksRight(page, 'stall-evening-settling');
    await page.getByRole('radio', { name: 'Given' }).check();
    await page.getByRole('button', { name: 'Make an enquiry: Ten shirts for the choir' }).click();
    await page.getByRole('link', { name: 'Open the enquiry: Ten shirts for the choir' }).waitFor();
    await page.getByRole('radio', { name: 'Go again' }).check();
    await page.getByRole('button', { name: 'Close the day' }).click();
    await page.getByRole('button', { name: 'Close it again' }).waitFor();
    await looksRight(page, 'stall-evening-closed');
  },
);

test.each(['', '#evening-decide'].flatMap((place) => [1280, 390].map((width) => [place, width] as const)))(
  'hardly anything moves on the evening at “%s” at %d px while its later parts come',
  async (place, width) => {
    const page = await evening(width);
    await page.goto(QUIET);
    await watchPace(page);
    await page.goto(`${EVENING}${place}`);
    await page.getByRole('button', { name: 'Close the day' }).waitFor();
    const { shift, moved } = await takePace(page);
    expect(shift, moved.join('\n')).toBeLessThan(MOST_SHIFT);
  },
);
