import { expect, test } from 'vitest';
import { kept } from '@/tests/e2e/harness/docketPage';
import { looksRight } from '@/tests/e2e/harness/looksRight';
import { openPage } from '@/tests/e2e/harness/openPage';

test.each([1280, 390])('the jobs show what each earns, are found and put away, %d wide', async (width) => {
  const page = await openPage({ path: '/jobs', width });
  const club = page.getByRole('row', { name: /Ramblers Club shirts/ });
  await club.getByText('40.5 %').waitFor();
  await expect.poll(() => club.textContent()).toContain('56.26');
  await looksRight(page, `jobs-${width}`);
  await page.getByRole('searchbox').fill('fair mug');
  await page.getByText('1 job found').waitFor();
  await page.getByRole('button', { name: 'More for Spring Fair mugs' }).click();
  await looksRight(page, `jobs-more-${width}`);
  await page.getByRole('button', { name: 'Put away Spring Fair mugs' }).click();
  await page.getByText('No job found, 1 among those put away').waitFor();
  await page.getByRole('button', { name: 'Show it too' }).click();
  await page.getByRole('row', { name: /Spring Fair mugs/ }).waitFor();
  await kept(page);
  await looksRight(page, `jobs-found-${width}`);
  await page.getByRole('button', { name: /^Undo/ }).click();
  await page.getByText('Undone: Put Spring Fair mugs away').waitFor();
});

test('what undo took back is said on the docket, and its field shown', async () => {
  const page = await openPage({ path: '/jobs/club-order' });
  const price = page.getByRole('textbox', { name: 'Price of a shirt', exact: true }).first();
  await price.fill('17');
  await price.blur();
  await kept(page);
  await page.getByRole('button', { name: /^Undo/ }).click();
  await page.getByText(/^Undone: Price of .*, in Ramblers Club shirts$/).waitFor();
  await page.getByRole('link', { name: 'Show it' }).click();
  await expect.poll(() => price.evaluate((field) => field === document.activeElement)).toBe(true);
  await expect.poll(() => price.inputValue()).toContain('19');
});
