import type { Page } from 'playwright-core';
import { afterEach, expect, test } from 'vitest';
import { kept, section } from './harness/docketPage';
import { type Hands, keyboard, pointer } from './harness/hands';
import { appKept, cutNetwork } from './harness/keptApp';
import { openPage } from './harness/openPage';
import { expectOnBoard, expectRoom, issue, note, type Station } from './harness/orderRoom';
import { type OwnServer, ownServer } from './harness/ownServer';
import { TEST_MS } from './harness/patience.mjs';

/*
 * From what somebody asks to the last coin. 37 shirts at 19.00, 1.50 more for each of 4 in 2XL and 2.50 for 1 in 3XL
 * come to 711.50, with 7 % of tax to 761.305: 761.31, half of it 380.66 before and 380.65 after (the worked order).
 * Three more in L at 12.50 (the worked alternative): 749.00, with tax 801.43; half of it 400.715.
 */

const asked = { total: '761.31', deposit: '380.66', rest: '180.66', balance: '380.65' } as const;
const threeMore = { total: '801.43', deposit: '400.72', rest: '200.72', balance: '400.71' } as const;
const FIRST_PART = '200.00';

let server: OwnServer | null = null;
afterEach(async () => {
  await server?.end();
  server = null;
});

interface Walk {
  readonly page: Page;
  readonly hands: Hands;
  /** Of the order. */
  readonly name: string;
  /** Whom the screen says has to answer. */
  readonly who: string;
  /** What it comes to; the customer takes the alternative where it is not as asked. */
  readonly sums: Readonly<Record<keyof typeof asked, string>>;
  /** Whether the board is looked at on the way. */
  readonly looksAtBoard: boolean;
  /** Whether the page is reloaded on the way. */
  readonly reloads: boolean;
}

/** From a job in the order to its end. */
async function walk({ page, hands, name, who, sums, looksAtBoard, reloads }: Walk): Promise<void> {
  const { total, deposit, rest, balance } = sums;
  const at = async (station: Station): Promise<void> => {
    await expectRoom(page, station);
    if (looksAtBoard) await expectOnBoard(page, hands, name, station);
  };
  const none = ['–', '0.00', '–'] as const;
  const [quoted, started] = [
    { stage: 'Quoted', turn: 'Customers' },
    { stage: 'Approval and deposit', turn: 'Customers' },
  ] as const;

  const quote = await issue(page, hands, 'Quote', 'quote');
  expect(quote).toMatch(/26-001[A-Z]/);
  for (const amount of [asked.total, asked.deposit, asked.balance]) expect(quote).toContain(amount);
  await at({
    ...quoted,
    ...{ waits: `One answer from ${who}`, money: none, last: 'Quote' },
    boardMoney: asked.total,
  });

  await note(page, hands, /^Accepted: /, async (form) => {
    if (sums !== asked) {
      const choices = form.getByRole('combobox', { name: 'What they chose' });
      const label = await choices.locator('option', { hasText: total }).textContent();
      await hands.choose(choices, label ?? '');
    }
    await hands.choose(form.getByRole('combobox', { name: 'How' }), 'By phone');
  });
  const nothingCame = [total, '0.00', total] as const;
  await at({
    ...{ ...started, turn: 'You', waits: `You send the proof, and ${who} has to answer` },
    ...{ money: nothingCame, last: 'Accepted', boardMoney: `${deposit} deposit` },
  });

  expect(await issue(page, hands, 'Proof', 'proof')).toContain('Hill path picture');
  await at({
    ...{ ...started, waits: `Two answers from ${who}, then you buy` },
    ...{ money: nothingCame, last: 'Proof', boardMoney: `${deposit} deposit` },
  });
  await note(page, hands, /^Approved: /);
  await at({
    ...{ ...started, waits: `One answer from ${who}, then you buy` },
    ...{ money: nothingCame, last: 'Approved', boardMoney: `${deposit} deposit` },
  });

  expect(await issue(page, hands, 'Requests', 'request')).toContain(deposit);
  await note(page, hands, /^It came: Deposit/, async (form) => {
    const amount = form.getByRole('textbox', { name: 'How much' });
    expect(await amount.inputValue()).toBe(deposit);
    await hands.type(amount, FIRST_PART);
  });
  const owedAfterPart = (Number(total) - Number(FIRST_PART)).toFixed(2);
  await at({
    ...{ ...started, waits: `One answer from ${who}, then you buy` },
    ...{ money: [total, FIRST_PART, owedAfterPart], last: 'Money came', boardMoney: `${rest} asked` },
  });
  if (reloads) {
    await kept(page);
    await page.reload();
  }
  await note(page, hands, new RegExp(`^It came: Deposit ${rest}`));
  const halfCame = { money: [total, deposit, balance], boardMoney: `${balance} to come` } as const;
  const making = { ...halfCame, stage: 'Making' } as const;
  await at({ ...making, turn: 'You', waits: 'You order the blanks', last: 'Money came' });

  await note(page, hands, /^Blanks ordered: /);
  await at({ ...making, turn: 'Nobody', waits: 'The blanks, which are on the way', last: 'Blanks ordered' });
  await note(page, hands, /^They came in: /);
  const printing = { ...making, turn: 'You', waits: 'You print the sheets', last: 'Blanks came in' } as const;
  await at(printing);
  await note(page, hands, /^Printed: /);
  await at({ ...making, turn: 'You', waits: 'You press', last: 'Printed' });
  await hands.press(page.getByRole('banner').getByRole('button', { name: /^Undo/ }));
  await expectRoom(page, printing);
  await note(page, hands, /^Printed: /);
  await note(page, hands, /^Pressed: /);
  await note(page, hands, /^Checked: /);
  await at({ ...making, turn: 'You', waits: 'You pack', last: 'Checked' });
  await note(page, hands, /^Packed: /);
  const handing = { ...halfCame, stage: 'Delivered' } as const;
  await at({ ...handing, turn: 'You', waits: 'You send the invoice', last: 'Packed' });

  const invoice = await issue(page, hands, 'Invoice', 'invoice');
  for (const amount of [total, balance]) expect(invoice).toContain(amount);
  await at({
    ...{ ...handing, turn: 'Customers', waits: `One answer from ${who}, then it is done`, last: 'Invoice' },
    boardMoney: `${balance} owed`,
  });
  await note(page, hands, /^It came: Balance/);
  const paid = { money: [total, total, '0.00'], boardMoney: 'paid' } as const;
  await at({ ...paid, stage: 'Delivered', turn: 'You', waits: 'You hand it over', last: 'Money came' });
  await note(page, hands, /^Delivered: /);
  await at({ ...paid, stage: null, turn: 'You', waits: 'You close the order', last: 'Delivered' });
  expect(await issue(page, hands, 'Receipt', 'receipt')).toContain(balance);
  await note(page, hands, /^Closed: /);
  await at({ ...paid, stage: null, turn: null, waits: 'Closed', last: 'Closed' });
  await kept(page);
}

/** Each is some forty steps long, with a paper at every fourth. */
const LONG = { timeout: 2 * TEST_MS };

const ENQUIRY = 'Fernhill Bakery, club shirts';

/** Somebody new asks; the worked job goes from the example's order into theirs. */
async function enquire(page: Page, hands: Hands): Promise<void> {
  await hands.press(page.getByRole('button', { name: 'New enquiry' }).first());
  const form = page.getByRole('form', { name: 'New enquiry' });
  await hands.type(form.getByRole('combobox', { name: 'Who asks' }), 'Fernhill Bakery');
  await hands.type(form.getByRole('textbox', { name: 'What they want' }), 'club shirts');
  await hands.type(form.getByRole('textbox', { name: 'How many' }), '37');
  await hands.setDay(form.getByLabel('Wanted on'), '2026-12-18');
  await hands.type(form.getByRole('textbox', { name: 'Heard of you from' }), 'The fair');
  await hands.press(form.getByRole('button', { name: 'Note it' }));
  await page.getByRole('heading', { level: 1, name: ENQUIRY }).waitFor();
  const enquiry: Station = {
    ...{ stage: 'Enquiry', waits: 'You answer with a quote', money: ['–', '0.00', '–'], last: 'Enquired' },
    ...{ turn: 'You', boardMoney: 'no price yet' },
  };
  await expectRoom(page, enquiry);
  await expectOnBoard(page, hands, ENQUIRY, enquiry);

  await hands.press(page.getByRole('link', { name: 'Orders', exact: true }).first());
  await hands.press(page.getByRole('link', { name: 'Ramblers Club shirts', exact: true }).first());
  await hands.press(section(page, 'Jobs').getByRole('button', { name: 'Take out Ramblers Club shirts' }));
  await section(page, 'Jobs')
    .getByRole('button', { name: /^Take out/ })
    .waitFor({ state: 'detached' });
  await hands.press(page.getByRole('link', { name: 'Orders', exact: true }).first());
  await hands.press(page.getByRole('link', { name: ENQUIRY, exact: true }).first());
  const jobs = section(page, 'Jobs');
  await hands.press(jobs.locator('summary', { hasText: 'Add a job that is there' }));
  await hands.choose(jobs.getByRole('combobox', { name: 'Job' }), 'Ramblers Club shirts');
  await hands.press(jobs.getByRole('button', { name: 'Add it' }));
  await jobs.getByRole('link', { name: 'Ramblers Club shirts' }).waitFor();
}

test(
  'an enquiry becomes an order that is paid; room, board, papers and money say the same all along',
  LONG,
  async () => {
    const page = await openPage({ path: '/orders' });
    await enquire(page, pointer);
    await walk({
      ...{ page, hands: pointer, name: ENQUIRY, who: 'Fernhill Bakery', sums: asked },
      ...{ looksAtBoard: true, reloads: true },
    });
  },
);

test('on a phone the order of the example is accepted otherwise than asked, and paid', LONG, async () => {
  const page = await openPage({ path: '/orders/club-enquiry', width: 390 });
  await page.getByRole('button', { name: 'Give it one' }).click();
  await page.getByRole('button', { name: /^It came: Letter that the crest/ }).click();
  await walk({
    ...{ page, hands: pointer, name: 'Ramblers Club shirts', who: 'Alex', sums: threeMore },
    ...{ looksAtBoard: true, reloads: true },
  });
});

test('the keyboard alone takes an order from the enquiry to the last payment', LONG, async () => {
  const page = await openPage({ path: '/orders' });
  await page.getByRole('heading', { level: 1, name: 'Orders' }).waitFor();
  await enquire(page, keyboard);
  await walk({
    ...{ page, hands: keyboard, name: ENQUIRY, who: 'Fernhill Bakery', sums: asked },
    ...{ looksAtBoard: false, reloads: false },
  });
});

test(
  'without a network an order goes from the enquiry to the last payment, and a reload has all of it',
  LONG,
  async () => {
    server = await ownServer(process.cwd());
    await server.start();
    const page = await openPage({ path: '/orders', keptFrom: server.baseUrl, width: 390 });
    await page.getByRole('heading', { level: 1, name: 'Orders' }).waitFor();
    await appKept(page);
    await cutNetwork(page);
    await server.end();
    await enquire(page, pointer);
    await walk({
      ...{ page, hands: pointer, name: ENQUIRY, who: 'Fernhill Bakery', sums: asked },
      ...{ looksAtBoard: false, reloads: true },
    });
  },
);
