// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, fireEvent, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { OrdersScreen } from '@/app/_orders/OrdersScreen';
import { addDays } from '@/shared/days';
import { dayInFull } from '@/tests/tools/clock/dayWords';
import { TEST_DAY, TEST_YEAR } from '@/tests/tools/clock/testDay';
import { eventually } from '@/tests/tools/eventually';
import { bodyOf, clearScreens, disk, enter, idsOf, leaveScreens, screenStore, undo } from './screens';

const went = vi.hoisted(() => vi.fn<(address: string) => void>());
vi.mock('next/navigation', () => ({ useRouter: () => ({ push: went }) }));
vi.mock('@/app/_store/appDocuments', async () => {
  const { screenStore: appDocuments } = await import('./screens');
  return { appDocuments };
});

beforeEach(() => went.mockClear());
afterEach(() => {
  cleanup();
  clearScreens();
});

const begin = async () => {
  await enter(<OrdersScreen />);
  const [button] = screen.getAllByRole('button', { name: 'New enquiry' });
  if (button === undefined) throw new Error('no button');
  await userEvent.click(button);
};
const who = () => screen.getByRole('combobox', { name: 'Who asks' });
const what = () => screen.getByRole('textbox', { name: 'What they want' });
const pieces = () => screen.getByRole('textbox', { name: 'How many' });
const wanted = () => screen.getByLabelText('Wanted on');
const noteIt = () => userEvent.click(screen.getByRole('button', { name: 'Note it' }));
const events = () => screenStore().getState().entries.orderEvent;
/** The order that the address one was led to names. */
const made = () => {
  const id = went.mock.calls[0]?.[0]?.replace('/orders/', '');
  if (id === undefined) throw new Error('no order was opened');
  return { id, order: bodyOf('order', id) };
};
const YESTERDAY = addDays(TEST_DAY, -1);
const retype = (field: HTMLElement, text: string) => fireEvent.change(field, { target: { value: text } });

it('stands on a board that leads to the customers', async () => {
  await enter(<OrdersScreen />);
  expect(screen.getByRole('link', { name: 'Customers' })).toHaveAttribute('href', '/customers');
});

describe('an enquiry', () => {
  it('becomes a numbered order of a new customer in one step, and its room is opened', async () => {
    await begin();
    expect(who()).toHaveFocus();
    await userEvent.type(who(), 'Fernhill Bakery');
    expect(screen.getByText('A new customer.')).toBeVisible();
    await userEvent.type(what(), 'aprons with our sign');
    await userEvent.type(pieces(), '15');
    fireEvent.change(wanted(), { target: { value: addDays(TEST_DAY, 20) } });
    await userEvent.type(screen.getByRole('textbox', { name: 'Heard of you from' }), 'the market');
    await noteIt();
    const { id, order } = made();
    expect(order).toMatchObject({
      name: 'Fernhill Bakery, aprons with our sign',
      asked: 'aprons with our sign',
      askedPieces: 15,
      wantedOn: addDays(TEST_DAY, 20),
      heardFrom: 'the market',
      jobIds: [],
    });
    expect(bodyOf('customer', order.customerId ?? '').name).toBe('Fernhill Bakery');
    expect(events().map(({ body }) => body)).toMatchObject([
      { orderId: id, day: TEST_DAY, step: { what: 'enquired', number: { year: TEST_YEAR, count: 1 } } },
    ]);
    await undo();
    expect([idsOf('order'), idsOf('customer')]).toEqual([['club-enquiry'], ['ramblers-club']]);
    expect(events()).toEqual([]);
  });

  it('is typed by keyboard alone', async () => {
    await enter(<OrdersScreen />);
    screen.getAllByRole('button', { name: 'New enquiry' })[0]?.focus();
    await userEvent.keyboard('{Enter}Kayak Club{Tab}bags{Tab}24{Enter}');
    expect(made().order).toMatchObject({ name: 'Kayak Club, bags', askedPieces: 24 });
  });

  it('is of the customer one has, however the name is typed, and their names are offered', async () => {
    await begin();
    expect(document.querySelector('datalist option')).toHaveAttribute('value', 'Exampleton Ramblers Club');
    await userEvent.type(who(), ' exampleton RAMBLERS club');
    expect(screen.getByText('A customer of yours, with 1 order.')).toBeVisible();
    await noteIt();
    expect(made().order.customerId).toBe('ramblers-club');
    expect(idsOf('customer')).toEqual(['ramblers-club']);
  });

  it('needs only who or what', async () => {
    await begin();
    await noteIt();
    expect(went).not.toHaveBeenCalled();
    expect(screen.getByText('Type who asks, or what they want.')).toBeVisible();
    await userEvent.type(what(), 'twelve mugs');
    await noteIt();
    expect(made().order).toMatchObject({ name: 'twelve mugs', customerId: null, askedPieces: null });
  });

  it('is found again after a reload, right or wrong, and is forgotten once it is noted', async () => {
    await begin();
    await userEvent.type(who(), 'Fernhill');
    await userEvent.type(pieces(), '3x');
    cleanup();
    leaveScreens();
    await enter(<OrdersScreen />);
    expect(who()).toHaveValue('Fernhill');
    expect(pieces()).toHaveValue('3x');
    // Nobody asked for it just now, so the hand is not taken there.
    expect(who()).not.toHaveFocus();
    await userEvent.clear(pieces());
    await noteIt();
    cleanup();
    await enter(<OrdersScreen />);
    expect(screen.queryByRole('combobox', { name: 'Who asks' })).toBeNull();
  });

  it('has the bar at the thumb out of its way while it is open', async () => {
    await begin();
    expect(screen.getAllByRole('button', { name: 'New enquiry' })).toHaveLength(1);
    expect(screen.queryByRole('button', { name: 'Find' })).toBeNull();
    await userEvent.click(screen.getByRole('button', { name: 'Not now' }));
    expect(screen.getAllByRole('button', { name: 'New enquiry' })).toHaveLength(2);
    expect(screen.getByRole('button', { name: 'Find' })).toBeVisible();
  });

  it('stays typed when it is put off, and goes when it is emptied', async () => {
    await begin();
    await userEvent.type(who(), 'Fernhill');
    await userEvent.click(screen.getByRole('button', { name: 'Not now' }));
    expect(screen.queryByRole('combobox', { name: 'Who asks' })).toBeNull();
    const [button] = screen.getAllByRole('button', { name: 'New enquiry' });
    expect(button).toHaveFocus();
    await userEvent.keyboard('{Enter}');
    expect(who()).toHaveValue('Fernhill');
    await userEvent.click(screen.getByRole('button', { name: 'Empty the form' }));
    expect(who()).toHaveValue('');
  });

  it.each([
    ['no pieces', pieces, '0', '0 is too small: the least here is 1.'],
    ['half a piece', pieces, '2.5', 'Only whole numbers go here.'],
    ['no number', pieces, 'a few', '“a” is no part of a number.'],
    [
      'a past day',
      wanted,
      YESTERDAY,
      `${dayInFull(YESTERDAY)} is past. Choose a day from today on, or leave it out.`,
    ],
    ['a long name', who, 'n'.repeat(121), '1 letter too long: 120 fit here.'],
    ['a long wish', what, 'w'.repeat(2003), '3 letters too long: 2000 fit here.'],
  ])('says of %s what is wrong, notes nothing and keeps it', async (_, field, text, told) => {
    await begin();
    await userEvent.type(who(), 'Fernhill');
    retype(field(), text);
    expect(screen.getByText(told)).toBeVisible();
    await noteIt();
    expect(went).not.toHaveBeenCalled();
    expect(field()).toHaveValue(text);
    expect(field()).toHaveFocus();
    expect(idsOf('order')).toEqual(['club-enquiry']);
  });

  it('keeps all of a long wish, though the order’s name is short', async () => {
    await begin();
    const wish = `mugs ${'with a very long saying '.repeat(20)}`.trim();
    await userEvent.type(who(), 'Fernhill');
    retype(what(), wish);
    await noteIt();
    const { order } = made();
    expect(order.asked).toBe(wish);
    expect(order.name).toHaveLength(110);
    expect(order.name.endsWith('…')).toBe(true);
  });

  it('of the same words twice makes two orders that are told apart', async () => {
    await begin();
    await userEvent.type(what(), 'Ramblers Club shirts');
    await noteIt();
    expect(made().order.name).toBe('Ramblers Club shirts 2');
  });

  it('is one order, though the button is pressed twice', async () => {
    await begin();
    await userEvent.type(who(), 'Fernhill');
    const button = screen.getByRole('button', { name: 'Note it' });
    fireEvent.click(button);
    if (button.isConnected) fireEvent.click(button);
    expect(idsOf('order')).toHaveLength(2);
  });

  it('is shown though the disk is full, and the store says that it is not kept', async () => {
    await begin();
    disk.isFull = true;
    await userEvent.type(who(), 'Fernhill');
    await noteIt();
    expect(made().order.name).toBe('Fernhill');
    await eventually(() => expect(screenStore().getState().kept).toMatchObject({ state: 'notKept' }));
  });
});
