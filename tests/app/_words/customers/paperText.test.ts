import { expect, it } from 'vitest';
import { paperText } from '@/app/_words/customers/paperText';

const order = { year: 2026, count: 14, letter: 'A' };
const number = { count: 2, letter: 'B' };

it.each([
  // A quote bears the number of its order and a version, with its letter where it is not the order's; others are counted by kind, year and device.
  ['quote', { order, issuedOn: '2026-11-26' }, 'quote 26-014A, version 2B'],
  ['confirmation', { order, issuedOn: '2026-11-26' }, 'order confirmation 26-014A, version 2B'],
  ['invoice', { order, issuedOn: '2026-12-02' }, 'invoice 26-002B'],
  ['quote', { order: null, issuedOn: '2026-11-26' }, 'quote 26-002B'],
  // Of a later version of the app, whose body nothing here reads.
  ['reminder', { words: 'unread' }, 'paper 2B'],
  ['priceListVersion', { issuedOn: '2026-11-26' }, 'version of a price list 2B'],
])('calls a paper of the kind %s by its own number', (kind, body, said) => {
  expect(paperText({ kind, number, body })).toBe(said);
});
