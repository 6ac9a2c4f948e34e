import { expect, test } from 'vitest';
import { kept } from '@/tests/e2e/harness/docketPage';
import { looksRight } from '@/tests/e2e/harness/looksRight';
import { openPage } from '@/tests/e2e/harness/openPage';

test.each([1280, 390])(
  'the board says whose turn it is; an enquiry survives a reload and becomes an order, %d wide',
  async (width) => {
    const page = await openPage({ path: '/orders', width });
    const board = page.getByRole('region', { name: 'All orders' });
    await board.getByRole('link', { name: 'Ramblers Club shirts' }).waitFor();
    await page.getByText('One waits for you').waitFor();
    await page.getByText('Answer Ramblers Club shirts').waitFor();
    // What the worked job takes of the week.
    await page.getByText(/^If the open one comes,/).waitFor();
    await looksRight(page, `orders-${width}`);

    await page.getByRole('button', { name: 'New enquiry' }).click();
    await page.getByRole('combobox', { name: 'Who asks' }).fill('Fernhill Bakery');
    await page.getByRole('textbox', { name: 'What they want' }).fill('aprons');
    await page.getByRole('textbox', { name: 'How many' }).fill('0');
    await page.getByText('0 is too small: the least here is 1.').waitFor();
    await looksRight(page, `orders-enquiry-${width}`);
    await page.reload();
    await expect.poll(() => page.getByRole('textbox', { name: 'How many' }).inputValue()).toBe('0');
    expect(await page.getByRole('combobox', { name: 'Who asks' }).inputValue()).toBe('Fernhill Bakery');
    await page.getByRole('textbox', { name: 'How many' }).fill('15');
    await page.getByRole('button', { name: 'Note it' }).click();
    await page.waitForURL(/\/orders\/[0-9a-f]{24}$/);
    await kept(page);

    await page.goto('/orders');
    await page.getByText('Two wait for you').waitFor();
    await page.getByRole('searchbox').fill('bakery');
    await page.getByText('1 order found').waitFor();
    const row = board.getByRole('listitem').filter({ hasText: 'Fernhill Bakery, aprons' });
    await expect.poll(() => row.textContent()).toMatch(/26-001[A-Z], 15 pieces asked/);
    await looksRight(page, `orders-found-${width}`);
  },
);
