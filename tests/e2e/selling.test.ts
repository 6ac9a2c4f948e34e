import { test } from 'vitest';
import { kept, priced, section, unfold } from '@/tests/e2e/harness/docketPage';
import { looksRight } from '@/tests/e2e/harness/looksRight';
import { openPage } from '@/tests/e2e/harness/openPage';

test.each([1280, 390])('charges and ways of selling stand beside the price at %d px', async (width) => {
  const page = await openPage({ width });
  await priced(page);
  const charges = section(page, 'Charges around the piece');
  await charges.getByRole('button', { name: /^All \d+ charges$/ }).click();
  const delivery = charges.locator('div').filter({ has: page.getByText('Delivery', { exact: true }) });
  // 30 minutes at 22.20 an hour and 12 miles at 0.60 are 18.30; at 30 % and fees of 1.5515 % 26.74.
  await delivery.last().getByText('27.00').waitFor();
  const ways = section(page, 'Ways of selling');
  await unfold(ways, 'Four ways side by side');
  await unfold(ways, 'At the till');
  const wholesale = ways.getByRole('listitem').filter({ hasText: 'not in your workshop yet' }).first();
  await wholesale.waitFor();
  // Half of 711.50, the customary discount of wholesale.
  await wholesale.getByText('355.75 USD').first().waitFor();
  await ways.getByText('761.31 USD').waitFor();
  await looksRight(page, 'selling');
  await wholesale.getByRole('button', { name: 'Add wholesale to the workshop' }).click();
  await kept(page);
  await page.reload();
  await priced(page);
  const added = section(page, 'Ways of selling').getByRole('listitem').filter({ hasText: '355.75 USD' });
  await added.getByRole('button').waitFor({ state: 'detached' });
});
