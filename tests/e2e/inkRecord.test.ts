import { expect, test } from 'vitest';
import { kept } from '@/tests/e2e/harness/docketPage';
import { looksRight } from '@/tests/e2e/harness/looksRight';
import { openPage } from '@/tests/e2e/harness/openPage';

test.each([1280, 390])('ink is noted, corrected and there after a reload, %d wide', async (width) => {
  const page = await openPage({ path: '/workshop#ink-refill', width });
  const form = page.getByRole('form', { name: 'A refill' });
  await form.getByRole('textbox', { name: 'Poured in, all colours' }).fill('62.5');
  await form.getByRole('button', { name: 'Note the refill' }).click();
  await kept(page);
  await page.getByRole('button', { name: /^Correct Refill of / }).click();
  const correction = page.getByRole('form', { name: /^Correct Refill of / });
  await correction.getByRole('textbox', { name: 'Poured in, all colours' }).fill('26.5');
  await looksRight(page, `ink-correction-${width}`);
  await correction.getByRole('button', { name: 'Put it right' }).click();
  await page.getByText('26.5 mL').waitFor();
  await kept(page);
  await page.reload();
  await page.getByText('26.5 mL').waitFor();
  expect(await page.getByText('62.5 mL').count()).toBe(0);
  await expect.poll(() => page.getByRole('button', { name: /^Correct Refill of / }).count()).toBe(1);
});
