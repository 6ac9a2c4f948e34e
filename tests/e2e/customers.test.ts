import { expect, test } from 'vitest';
import { kept } from '@/tests/e2e/harness/docketPage';
import { looksRight } from '@/tests/e2e/harness/looksRight';
import { openPage } from '@/tests/e2e/harness/openPage';

test('a customer is added on a phone, erased on request, and does not come back with the page', async () => {
  const page = await openPage({ path: '/customers', width: 390 });
  await page.getByRole('button', { name: 'New customer' }).click();
  await page.getByRole('textbox', { name: 'Name of the club, shop or person' }).fill('Quillhaven Harriers');
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { level: 1, name: 'Quillhaven Harriers' }).waitFor();
  const address = page.url();
  await page.getByRole('button', { name: 'Add a person' }).click();
  const form = page.getByRole('form', { name: 'A further person' });
  await form.getByRole('textbox', { name: 'Name' }).fill('Ana Silva');
  await form.getByRole('textbox', { name: 'Mail' }).fill('ana@harriers.example');
  await page.keyboard.press('Enter');
  await page.getByText('Ana Silva, ana@harriers.example').waitFor();
  await kept(page);
  await looksRight(page, 'customer-390');

  await page.getByRole('button', { name: 'Erase on request' }).click();
  await page.getByText(/“Quillhaven Harriers” goes for good/).waitFor();
  await looksRight(page, 'customer-erasing-390');
  await page.getByRole('checkbox', { name: 'I have read this, and they asked for it' }).check();
  await page.getByRole('button', { name: 'Erase for good' }).click();
  await page.getByRole('heading', { level: 1, name: /^Erased on / }).waitFor();

  await page.goto(address);
  await page.getByRole('heading', { level: 1, name: /^Erased on / }).waitFor();
  expect(await page.getByText(/Quillhaven|Ana Silva/).count()).toBe(0);
  await page.getByRole('link', { name: 'To the customers' }).click();
  await page.getByRole('button', { name: /1 erased customer/ }).waitFor();
  expect(await page.getByText(/Quillhaven|Ana Silva/).count()).toBe(0);
  await looksRight(page, 'customers-390');
});
