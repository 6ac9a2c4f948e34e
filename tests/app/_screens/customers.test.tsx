// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { act, cleanup, fireEvent, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { CustomerScreen } from '@/app/_customers/CustomerScreen';
import { CustomersScreen } from '@/app/_customers/CustomersScreen';
import { formMemory } from '@/app/_fields/formMemory';
import { intakeMemory } from '@/app/_names/intakeMemory';
import { CLUB_CUSTOMER_ID, CLUB_ENQUIRY_ID, clubCustomer, clubEnquiry } from '@/lib/examples/clubEnquiry';
import { customerSchema } from '@/shared/schemas/customer';
import { orderSchema } from '@/shared/schemas/order';
import { dayInFull } from '@/tests/tools/clock/dayWords';
import { TEST_DAY } from '@/tests/tools/clock/testDay';
import { eventually } from '@/tests/tools/eventually';
import { bodyOf, clearScreens, damage, disk, enter, idsOf, leaveScreens, screenStore, undo } from './screens';

const push = vi.hoisted(() => vi.fn<(href: string) => void>());
vi.mock('next/navigation', () => ({ useRouter: () => ({ push }), usePathname: () => '/customers' }));
vi.mock('@/app/_store/appDocuments', async () => {
  const { screenStore: appDocuments } = await import('./screens');
  return { appDocuments };
});

beforeEach(() => push.mockClear());
afterEach(() => {
  cleanup();
  clearScreens();
});

/** Two customers beside those of the examples; the choir ordered twice. */
async function filled(open: () => Promise<void>): Promise<void> {
  await enter(<CustomersScreen />);
  const { actions } = screenStore();
  await act(async () => {
    actions.edit('Customers', [
      { do: 'add', kind: 'customer', id: 'choir', body: choir },
      { do: 'add', kind: 'customer', id: 'bakery', body: customerSchema.parse({ name: 'Fernhill Bakery' }) },
      { do: 'add', kind: 'order', id: 'mugs', body: order('Choir mugs') },
      { do: 'add', kind: 'order', id: 'bags', body: order('Choir bags') },
    ]);
    actions.note('Enquiries', [enquired('mugs', '2026-11-02', 12), enquired('bags', '2026-11-20', 14)]);
  });
  // The write gives them their numbers.
  await eventually(() => expect(letter()).not.toBe(''));
  await act(async () => undefined);
  cleanup();
  await open();
}
const letter = () => screenStore().getState().device?.letter ?? '';
/** The mugs were asked for first on this device, then the bags. */
const [mugs, bags] = [() => `26-001${letter()}`, () => `26-002${letter()}`];
const choir = customerSchema.parse({
  name: 'Harbour Choir',
  people: [
    { id: 'ana', name: 'Ana Silva', email: 'ana@choir.example', phone: '555 0110' },
    { id: 'ben', name: 'Ben Okoro' },
  ],
  addresses: [{ id: 'hall', purpose: 'both', text: '7 Quay Street\nHarbourtown' }],
});
const order = (name: string) => orderSchema.parse({ name, customerId: 'choir', personId: 'ben' });
const enquired = (orderId: string, day: string, count: number) => ({
  kind: 'orderEvent' as const,
  body: { orderId, day, step: { what: 'enquired' as const, number: { year: 2026, count, letter: 'A' } } },
});
const list = () => filled(() => enter(<CustomersScreen />));
const choirScreen = () => filled(() => enter(<CustomerScreen customerId="choir" />));
const kept = (id = 'choir') => bodyOf('customer', id);
const part = (name: string) => within(screen.getByRole('region', { name }));
const press = (name: string | RegExp) => userEvent.click(screen.getByRole('button', { name }));
const type = (field: HTMLElement, value: string) => fireEvent.change(field, { target: { value } });

describe('the list of customers', () => {
  it('names whoever asked last first, with whom to write to and the last order', async () => {
    await list();
    const names = screen.getAllByRole('listitem').map((row) => row.textContent);
    expect(names[0]).toBe(`Harbour ChoirAna Silva, ana@choir.example${bags()}Nov 20, 2026, 2 orders in all`);
    expect(names.find((text) => text?.startsWith('Fernhill'))).toMatch(
      /nobody to write to yet.*no order yet/,
    );
    expect(screen.getByRole('link', { name: 'Harbour Choir' })).toHaveAttribute('href', '/customers/choir');
  });

  it.each([
    ['ben', 'Harbour Choir'],
    ['26-001', 'Harbour Choir'],
    ['quay', 'Harbour Choir'],
    ['FERNHILL', 'Fernhill Bakery'],
  ])('finds by person, number, address and name: %s', async (text, name) => {
    await list();
    type(screen.getByRole('searchbox'), text);
    expect(screen.getAllByRole('listitem')).toHaveLength(1);
    expect(screen.getByRole('link', { name })).toBeVisible();
  });

  it('says so when a search finds nobody', async () => {
    await list();
    type(screen.getByRole('searchbox'), 'zzz');
    expect(screen.getByText('No customer found')).toBeVisible();
  });

  it('takes a new customer by name alone and opens it', async () => {
    await list();
    const before = idsOf('customer').length;
    await press('New customer');
    const name = screen.getByRole('textbox', { name: 'Name of the club, shop or person' });
    expect(name).toHaveFocus();
    await userEvent.keyboard('  {Enter}');
    expect(idsOf('customer')).toHaveLength(before);
    await userEvent.clear(name);
    await userEvent.keyboard('harbour choir');
    expect(name).toHaveAccessibleDescription('Somebody of this name is here already.');
    expect(screen.getByRole('link', { name: 'See who is here' })).toHaveAttribute('href', '/customers/choir');
    await userEvent.keyboard(' juniors{Enter}');
    const added = idsOf('customer').find((id) => kept(id).name === 'harbour choir juniors');
    expect(push).toHaveBeenCalledWith(`/customers/${added}`);
  });
});

describe('one customer', () => {
  it('says who is written to, where bills go, whether tax is taken and what was ordered', async () => {
    await choirScreen();
    expect(part('People').getByText('Ana Silva').closest('p')).toHaveTextContent(
      'Ana Silva is written to, 1 other person beside',
    );
    expect(part('Addresses').getByText('7 Quay Street')).toBeVisible();
    expect(part('Language and tax').getByText('Tax').closest('p')).toHaveTextContent('Tax is taken of them');
    expect(part('Orders').getByText('2 orders').closest('p')).toHaveTextContent(
      `2 orders, the last ${bags()}, asked on Nov 20, 2026`,
    );
    expect(part('Orders').getByRole('link', { name: 'Choir mugs' })).toHaveAttribute('href', '/orders/mugs');
  });

  it('writes to another person once that one is put first', async () => {
    await choirScreen();
    await press('Write to Ben Okoro');
    expect(kept().people.map(({ id }) => id)).toEqual(['ben', 'ana']);
    expect(screenStore().getState().undoLabel).toBe('Write to Ben Okoro');
  });

  it('adds a person by name and takes a removed one back', async () => {
    await choirScreen();
    await press('Add a person');
    const form = within(screen.getByRole('form', { name: 'A further person' }));
    expect(form.getByLabelText('Name')).toHaveFocus();
    await press('Add them');
    expect(kept().people).toHaveLength(2);
    type(form.getByLabelText('Name'), 'Cy Marsh');
    type(form.getByLabelText('Mail'), 'cy at choir');
    expect(form.getByLabelText('Mail')).toHaveAccessibleDescription(/no message arrives/);
    await press('Add them');
    expect(kept().people[2]).toMatchObject({ name: 'Cy Marsh', email: 'cy at choir', phone: '' });
    await press('Remove Cy Marsh');
    expect(kept().people).toHaveLength(2);
    await press('Bring it back');
    expect(kept().people[2]?.name).toBe('Cy Marsh');
  });

  it('tells before a person goes whom orders name', async () => {
    await choirScreen();
    await press('Remove Ben Okoro');
    expect(screen.getByRole('alert')).toHaveTextContent(
      `${bags()} and ${mugs()} name “Ben Okoro”. Papers there are written to the first person who is left.`,
    );
    expect(kept().people).toHaveLength(2);
    await press('Remove Ben Okoro all the same');
    expect(kept().people).toHaveLength(1);
  });

  it('keeps an address that is emptied, and says so', async () => {
    await choirScreen();
    const text = screen.getByLabelText('As on an envelope');
    type(text, '');
    expect(text).toHaveAccessibleDescription(/Something has to stand here/);
    expect(kept().addresses[0]?.text).toBe('7 Quay Street\nHarbourtown');
  });

  it('has papers in a language by its name, or in any other by its tag', async () => {
    await choirScreen();
    const language = screen.getByLabelText('Language of their papers');
    expect(language).toHaveDisplayValue('Yours: English');
    await userEvent.selectOptions(language, 'German');
    expect(kept().language).toBe('de');
    await userEvent.selectOptions(language, 'Another language…');
    const tag = screen.getByLabelText('Its tag');
    type(tag, 'c');
    expect(tag).toHaveAccessibleDescription(/No language has this tag/);
    expect(kept().language).toBe('de');
    type(tag, 'ca');
    expect(kept().language).toBe('ca');
  });

  it('is exempt from the first letter of a number on, until the day it ends', async () => {
    await choirScreen();
    const number = screen.getByLabelText('Number of their certificate');
    expect(screen.queryByLabelText('Valid until')).toBeNull();
    type(number, 'E');
    type(number, 'EX-77');
    expect(kept().exemption).toEqual({ number: 'EX-77', validUntil: null, proof: null });
    const until = screen.getByLabelText('Valid until');
    // The last day still counts.
    type(until, TEST_DAY);
    expect(until).toBeValid();
    type(until, '2026-11-01');
    expect(until).toHaveAccessibleDescription(
      'It ended on Nov 1, 2026, so no quote goes out without tax. Ask them for a new one and set its last day, or take tax in their orders.',
    );
    expect(screen.getByText(/What counts as proof your local authority says/)).toBeVisible();
    type(number, '');
    expect(kept().exemption?.number).toBe('EX-77');
    await press('They are not exempt any more');
    expect(kept().exemption).toBeNull();
    await undo();
    expect(kept().exemption?.validUntil).toBe('2026-11-01');
  });

  it('keeps the certificate as a file, one at a time', async () => {
    await choirScreen();
    type(screen.getByLabelText('Number of their certificate'), 'EX-77');
    await userEvent.upload(screen.getByLabelText('File to keep'), new File(['abc'], 'letter.pdf'));
    expect(await screen.findByRole('button', { name: 'Save letter.pdf' })).toBeVisible();
    expect(kept().exemption?.proof).toMatchObject({ fileName: 'letter.pdf', purpose: 'exemption' });
    expect(screen.queryByLabelText('File to keep')).toBeNull();
    await press('Remove letter.pdf');
    expect(kept().exemption?.proof).toBeNull();
  });

  it('takes a note as long as the document does, and no longer', async () => {
    await choirScreen();
    const note = screen.getByLabelText('Only for you, on no paper');
    type(note, 'n'.repeat(4000));
    expect(kept().note).toHaveLength(4000);
    type(note, 'n'.repeat(4003));
    expect(note).toHaveAccessibleDescription(/3 letters too long: 4000 fit here/);
    expect(note).toHaveValue('n'.repeat(4003));
    expect(kept().note).toHaveLength(4000);
  });

  it('is removed only after it was told which orders stand on it, and comes back', async () => {
    await choirScreen();
    await press('Remove Harbour Choir');
    expect(screen.getByRole('alert')).toHaveTextContent(
      `“Harbour Choir” is the customer of ${bags()} and ${mugs()}. The orders stay, but no paper can be written for each of them until you choose another customer there.`,
    );
    await press('Remove Harbour Choir all the same');
    expect(screen.getByRole('heading', { level: 1 })).toHaveTextContent('This customer is removed');
    await press('Bring them back');
    expect(kept().name).toBe('Harbour Choir');
  });

  it('that is not here is told, with the way to the others', async () => {
    await enter(<CustomerScreen customerId="nobody" />);
    expect(screen.getByRole('heading', { level: 1 })).toHaveTextContent('This customer is not here');
    expect(screen.getByRole('link', { name: 'To the customers' })).toHaveAttribute('href', '/customers');
  });

  it('that cannot be read stays kept, and can be saved as a file', async () => {
    await choirScreen();
    cleanup();
    leaveScreens();
    await damage({ id: 'choir', kind: 'customer', version: 1, revision: 9, updatedAt: 1, body: { name: 7 } });
    await enter(<CustomerScreen customerId="choir" />);
    expect(screen.getByRole('heading', { level: 1 })).toHaveTextContent('This customer cannot be read');
    expect(await screen.findByRole('button', { name: 'Save it as a file' })).toBeVisible();
  });
});

describe('erasing on request', () => {
  it('tells first what goes, stays and cannot be reached, and wants it read', async () => {
    await choirScreen();
    await press('Erase on request');
    const told = within(screen.getByRole('region', { name: 'Erase on request' }));
    expect(
      told.getByText(/“Harbour Choir” goes for good: people, addresses, tax number, files/),
    ).toBeVisible();
    expect(
      told.getByText(/Copies made before, other devices and files you carried still hold it/),
    ).toBeVisible();
    await press('Erase for good');
    expect(kept().erasedOn).toBeNull();
    await press('Keep them');
    expect(screen.getByRole('button', { name: 'Erase on request' })).toBeVisible();
  });

  it('leaves a place that says so and its orders without names, for good', async () => {
    await choirScreen();
    await press('Erase on request');
    await userEvent.click(screen.getByRole('checkbox', { name: 'I have read this, and they asked for it' }));
    await press('Erase for good');
    expect(
      await screen.findByRole('heading', { level: 1, name: `Erased on ${dayInFull(TEST_DAY)}` }),
    ).toBeVisible();
    expect(JSON.stringify(screenStore().getState().documents)).not.toMatch(/Harbour Choir|Ana Silva|Quay/);
    expect(kept()).toMatchObject({ people: [], addresses: [], erasedOn: TEST_DAY });
    expect(part('Orders').getAllByRole('link')).toHaveLength(2);
    cleanup();
    leaveScreens();
    await enter(<CustomersScreen />);
    expect(screen.queryByText('Harbour Choir')).toBeNull();
    await press(/1 erased customer/);
    expect(screen.getByRole('link', { name: `Erased on ${dayInFull(TEST_DAY)}` })).toBeVisible();
  });

  it('forgets names and forms that are being filled in for their orders, removed ones too, and no others', async () => {
    const kept = (orderId: string) => `${orderId} job line`;
    const beginning = { text: 'Kim Novak\tM', look: null };
    await choirScreen();
    await act(async () => screenStore().actions.edit('Bags', [{ do: 'delete', kind: 'order', id: 'bags' }]));
    const payment = (orderId: string) => ({ orderId, name: 'money payment', isErased: false });
    for (const orderId of ['mugs', 'bags', 'of others']) {
      intakeMemory.remember(kept(orderId), beginning);
      formMemory.remember(payment(orderId), 'note', 'from Kim Novak');
    }
    await press('Erase on request');
    await userEvent.click(screen.getByRole('checkbox'));
    await press('Erase for good');
    await screen.findByRole('heading', { level: 1, name: `Erased on ${dayInFull(TEST_DAY)}` });
    await vi.waitFor(() => expect(intakeMemory.holdsFor('mugs')).toBe(false));
    expect(intakeMemory.holdsFor('bags')).toBe(false);
    expect(intakeMemory.recall(kept('of others'))).toEqual(beginning);
    expect(['mugs', 'bags', 'of others'].map((id) => formMemory.recall(payment(id), 'note'))).toEqual([
      ...[undefined, undefined, 'from Kim Novak'],
    ]);
  });

  it('that cannot be kept erases nothing, and says why', async () => {
    await choirScreen();
    await press('Erase on request');
    await userEvent.click(screen.getByRole('checkbox'));
    intakeMemory.remember('mugs job line', { text: 'Kim Novak\tM', look: null });
    disk.isFull = true;
    await press('Erase for good');
    expect(await screen.findByText(/^Nothing was erased\. The device has no room left/)).toBeVisible();
    expect(kept().name).toBe('Harbour Choir');
    expect(intakeMemory.holdsFor('mugs')).toBe(true);
  });
});

it('stands with the example’s enquiry, whose customer has an address for bills and goods', async () => {
  await enter(<CustomersScreen />);
  await act(async () => {
    screenStore().actions.edit('Club', [
      { do: 'add', kind: 'customer', id: `${CLUB_CUSTOMER_ID}-2`, body: clubCustomer },
      {
        do: 'add',
        kind: 'order',
        id: `${CLUB_ENQUIRY_ID}-2`,
        body: { ...clubEnquiry('club-order', '2026-12-14'), customerId: `${CLUB_CUSTOMER_ID}-2` },
      },
    ]);
  });
  cleanup();
  await enter(<CustomerScreen customerId={`${CLUB_CUSTOMER_ID}-2`} />);
  expect(part('Addresses').getByText('Club hut, 3 Sample Lane').closest('p')).toHaveTextContent(
    'Club hut, 3 Sample Lane for bills and goods',
  );
});
