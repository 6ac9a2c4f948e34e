import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { kept, section, unfold } from './harness/docketPage';
import { pointer } from './harness/hands';
import { looksRight } from './harness/looksRight';
import { openPage } from './harness/openPage';
import { issue } from './harness/orderRoom';
import { shot } from './harness/shot';

/* Names are as long as somebody types them, and may hold no place to break at. */

/** 89 letters without a gap. */
const LONG = 'Quillhavenharriers'.repeat(5).slice(0, 89);
const ORDER = '/orders/club-enquiry';

test.each([320, 390, 1280])(
  'customers with names of one long word stay within the page, %d wide',
  async (width) => {
    const page = await openPage({ path: '/customers', width });
    await page.getByRole('button', { name: 'New customer' }).click();
    await page.getByRole('textbox', { name: 'Name of the club, shop or person' }).fill(LONG);
    await fits(page, width, 'a new customer');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { level: 1, name: LONG }).waitFor();
    await page.getByRole('button', { name: 'Add a person' }).click();
    const form = page.getByRole('form', { name: 'A further person' });
    await form.getByRole('textbox', { name: 'Name' }).fill(LONG);
    await fits(page, width, 'a further person');
    await page.keyboard.press('Enter');
    await page.getByText(LONG).nth(1).waitFor();
    await fits(page, width, 'a customer');
    await page.getByRole('button', { name: 'Erase on request' }).click();
    await page.getByText(/goes for good/).waitFor();
    await fits(page, width, 'erasing');
    await kept(page);
    await page.goto('/customers');
    await page.getByRole('link', { name: LONG }).waitFor();
    await fits(page, width, 'the customers');
  },
);

test.each([320, 390, 1280])(
  'an order with names of one long word stays within the page, and its forms in their boxes, %d wide',
  async (width) => {
    const page = await openPage({ path: '/orders', width });
    await page.getByRole('button', { name: 'New enquiry' }).click();
    await page.getByRole('combobox', { name: 'Who asks' }).fill(LONG);
    await page.getByRole('textbox', { name: 'What they want' }).fill(LONG);
    await fits(page, width, 'an enquiry');
    await page.getByRole('button', { name: 'Note it' }).click();
    await page.getByRole('heading', { level: 1, name: LONG }).waitFor();
    await fits(page, width, 'an order that was noted');
    await kept(page);

    await page.goto(ORDER);
    await page.getByRole('button', { name: 'Ramblers Club shirts', exact: true }).click();
    await page.getByRole('textbox', { name: 'Name of the order' }).fill(LONG);
    await page.keyboard.press('Enter');
    await page.locator('summary', { hasText: 'What was asked' }).click();
    await page.getByRole('combobox', { name: 'Customer', exact: true }).selectOption({ label: LONG });
    await page.getByRole('button', { name: 'Give it one' }).click();
    await fits(page, width, 'an order');

    await issue(page, pointer, 'Quote', 'quote');
    const waits = section(page, 'What it waits for');
    await waits.getByRole('button', { name: /^Accepted: / }).click();
    const form = waits.getByRole('form');
    await form.getByRole('combobox', { name: 'What they chose' }).waitFor();
    await fits(page, width, 'the form of a yes');
    expect(await besideTheirBox(form), 'fields beside the form').toEqual([]);
    await shot(page, `longNames-accepted-${width}`);
    await form.getByRole('button', { name: 'Leave it' }).click();

    const names = await lookedAt(page, `${LONG} M`);
    await names.getByText('1 row read').waitFor();
    await fits(page, width, 'names that are looked at');

    await page.goto('/orders');
    await page
      .getByRole('region', { name: 'All orders' })
      .getByRole('link', { name: LONG })
      .first()
      .waitFor();
    await fits(page, width, 'the board');
  },
);

test('what is bought and made under names of one long word stays within the page', async () => {
  const page = await openPage({ path: '/making/suppliers', width: 390 });
  const fitsAlways = async (what: string) => {
    for (const width of [320, 1280, 390]) {
      await page.setViewportSize({ width, height: 844 });
      await fits(page, width, `${what}, ${width} wide`);
    }
  };
  for (const name of ['New supplier', 'New consumable']) {
    await page.getByRole('textbox', { name }).fill(LONG);
    await page.keyboard.press('Enter');
  }
  await page.getByRole('combobox', { name: 'A further offer of' }).selectOption({ index: 1 });
  await page.getByRole('button', { name: 'Add it' }).first().click();
  await page.getByRole('button', { name: 'Goods in' }).click();
  await fitsAlways('a supplier');
  await kept(page);

  await page.goto('/making/buying');
  await page.getByRole('button', { name: 'New list' }).click();
  await page.getByRole('checkbox', { name: /not accepted yet/ }).check();
  await page.getByRole('button', { name: 'Make the list' }).click();
  await page.getByRole('button', { name: `Order from ${LONG}` }).click();
  await page.getByRole('button', { name: /^Issue order/ }).waitFor();
  await rename(page);
  await fitsAlways('a buying list');
  await kept(page);

  await page.goto('/making');
  await page.getByRole('button', { name: 'New run' }).click();
  await page.getByRole('textbox', { name: 'Name' }).fill(LONG);
  await page.getByRole('checkbox', { name: 'Ramblers Club shirts' }).check();
  await fitsAlways('a new run');
  await page.getByRole('button', { name: 'Plan it' }).click();
  await page.getByRole('button', { name: 'Begin', exact: true }).click();
  await page.getByRole('link', { name: 'To the press' }).first().waitFor();
  await fitsAlways('a run that was begun');
  await kept(page);
  const run = new URL(page.url()).pathname;
  for (const [path, words] of [
    [`${run}/press`, 'Spares left'],
    [`${run}/after`, 'What it took'],
    ['/making', 'Under way'],
    ['/making/buying', 'Buying'],
  ] as const) {
    await page.goto(path);
    await page.getByRole('main').getByText(words).first().waitFor();
    await page.getByRole('main').getByText(LONG).first().waitFor();
    await fitsAlways(path);
  }
});

test('on a phone name, size and number of what was read stand beside each other', async () => {
  const page = await openPage({ path: ORDER, width: 390 });
  const names = await lookedAt(page, 'Name\tSize\tNumber\nAna\tM\t7\nBo\tL\t8');
  await names.getByText('2 rows read').waitFor();
  const table = names.getByRole('region', { name: 'Rows that were read' });
  const [box, number] = [await table.boundingBox(), await table.getByRole('combobox').nth(2).boundingBox()];
  const end = (one: typeof box) => (one === null ? Number.NaN : one.x + one.width);
  expect(end(number)).toBeLessThanOrEqual(end(box));
  await looksRight(page, 'names-390');
});

test('five hundred names that are looked at outlive a reload, with what was chosen for them', async () => {
  const page = await openPage({ path: ORDER, width: 390 });
  const rows = Array.from({ length: 500 }, (_, at) => `Runner ${at + 1}\tM\t${at + 1}`);
  const names = await lookedAt(page, ['Name\tSize\tNumber', ...rows].join('\n'));
  await names.getByText('500 rows read').waitFor();
  const prints = names.getByRole('checkbox', { name: 'Print the names and numbers on the pieces' });
  await prints.check();
  await page.reload();
  await names.getByText('500 rows read').waitFor();
  expect(await prints.isChecked()).toBe(true);
});

test.each([
  [390, true],
  [1280, false],
])(
  'what would go out shows its upper part on a phone until the whole is asked for, %d wide',
  async (width, isCut) => {
    const page = await openPage({ path: ORDER, width });
    const paper = page.getByRole('article', { name: /^Quote/ });
    await paper.waitFor();
    const whole = page.getByRole('button', { name: 'Show the whole paper' });
    expect(await whole.count()).toBe(isCut ? 1 : 0);
    // The sums stand below the upper part: not there for a screen reader either.
    const last = paper.getByText(/^total/i).last();
    expect(await last.isVisible()).toBe(!isCut);
    if (!isCut) return;
    const pageHeight = () => page.evaluate(() => document.documentElement.scrollHeight);
    const short = await pageHeight();
    await shot(page, 'order-cut-390');
    await whole.click();
    expect(await whole.getAttribute('aria-expanded')).toBe('true');
    expect(await last.isVisible()).toBe(true);
    expect(short).toBeLessThan((await pageHeight()) - 500);
  },
);

// Helpers

/** The document of the page has a long name. */
async function rename(page: Page): Promise<void> {
  await page.getByRole('heading', { level: 1 }).getByRole('button').click();
  await page.keyboard.type(LONG);
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { level: 1, name: LONG }).waitFor();
}

/** Names typed into the order's own part and looked at. @returns that part */
async function lookedAt(page: Page, text: string): Promise<Locator> {
  const names = page.getByRole('region', { name: 'Sizes and names' });
  await unfold(names, /^Sizes and names/);
  await unfold(names, 'Paste or read names');
  await names.getByRole('textbox', { name: 'Names, as you got them' }).fill(text);
  await names.getByRole('button', { name: 'Look at them' }).click();
  return names;
}

/** Nothing lies beside the page; the test names what does. */
async function fits(page: Page, width: number, what: string): Promise<void> {
  const wide = await page.evaluate((most) => {
    const beside = [...document.querySelectorAll('body *')].filter(
      (one) => one.getBoundingClientRect().right > most + 0.5 && one.closest('.visuallyHidden') === null,
    );
    return {
      width: document.documentElement.scrollWidth,
      beside: beside
        .slice(0, 12)
        .map((one) => `${one.tagName} ${one.className} ${(one.textContent ?? '').slice(0, 40)}`),
    };
  }, width);
  expect(wide.width, `${what}: ${wide.beside.join('\n')}`).toBeLessThanOrEqual(width);
}

/** What sticks out of a form. */
const besideTheirBox = (form: Locator): Promise<readonly string[]> =>
  form.evaluate((box) => {
    const most = box.getBoundingClientRect().right;
    return [...box.querySelectorAll('input, select, textarea, button')]
      .filter((one) => one.getBoundingClientRect().right > most + 0.5)
      .map((one) => one.getAttribute('aria-label') ?? one.id);
  });
