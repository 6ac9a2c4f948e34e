import { expect, test } from 'vitest';
import { openPage } from '@/tests/e2e/harness/openPage';

const SECTIONS = [
  ['checks', 'Checks'],
  ['prices', 'Prices'],
  ['levers', 'What would raise it'],
] as const;

test.each([1280, 390])(
  'an address that names a section leads to it once it has come, %d wide',
  async (width) => {
    for (const [id] of SECTIONS) {
      const page = await openPage({ path: `/jobs/club-order#${id}`, width });
      const heading = page.locator(`#${id}-heading`);
      await heading.waitFor();
      await expect.poll(() => heading.evaluate((it) => it === document.activeElement)).toBe(true);
      await expect
        .poll(() => heading.evaluate((it) => it.getBoundingClientRect().top < window.innerHeight / 2))
        .toBe(true);
      await page.close();
    }
  },
);

test.each([
  ['job-lines-0-packagingId', 'Packaging, up-charges, names'],
  ['job-lines-0-ownPrices-new1-each', 'Your own prices'],
])('an address that names %s inside the fold “%s” opens the fold and leads to it', async (id, fold) => {
  const page = await openPage({ path: `/jobs/club-order#${id}` });
  const field = page.locator(`#${id}`);
  await field.waitFor();
  await expect.poll(() => field.evaluate((it) => it.contains(document.activeElement))).toBe(true);
  const opener = page.getByRole('button', { name: fold, exact: true });
  await expect.poll(() => opener.getAttribute('aria-expanded')).toBe('true');
});
