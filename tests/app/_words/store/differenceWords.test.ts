import { describe, expect, it } from 'vitest';
import { formatterFor } from '@/app/_words/formatter';
import { differenceWords } from '@/app/_words/store/differenceWords';
import { draftDifferences } from '@/lib/copies/draftDifferences';

const formatter = formatterFor({
  locale: 'en-US',
  units: { length: 'mm', temperature: 'C', pressure: 'bar', volume: 'mL', distance: 'km' },
  currency: 'USD',
});
const nameOf = (kind: string, id: string) => (kind === 'blank' && id === 'b1' ? 'White mug' : null);
const words = (path: readonly string[], mine: unknown, theirs: unknown) =>
  differenceWords(
    { path, mine, theirs },
    { kind: 'job', mine: { lines: [{ id: 'l1' }] }, theirs: { lines: [{ id: 'l1' }, { id: 'l2' }] } },
    { formatter, nameOf },
  );

describe('differenceWords', () => {
  it.each([
    [['customer'], 'Alex', '', { place: 'customer', mine: '“Alex”', theirs: 'nothing' }],
    [['wantedOn'], null, '2026-12-08', { place: 'day it is wanted', mine: 'nothing', theirs: 'Dec 8, 2026' }],
    [
      ['lines', 'l1', 'blankId'],
      'b1',
      'b2',
      { place: 'blank of line 1', mine: '“White mug”', theirs: 'another one' },
    ],
    [['lines', 'l2'], undefined, { name: 'Bags' }, { place: 'line 2', mine: 'nothing', theirs: '“Bags”' }],
    [['sewnLabel'], 'notStated', true, { place: 'sewn label', mine: 'not stated', theirs: 'yes' }],
    [['quantities'], [], [1, 2], { place: 'list of quantities', mine: 'nothing', theirs: '1, 2' }],
  ] as const)('says of %j what is here and what the copy has, never an id', (path, mine, theirs, told) => {
    expect(words(path, mine, theirs)).toEqual(told);
  });
});

describe('a difference in what a maker named', () => {
  const rate = (value: number, unit: string) => ({ value, unit, date: '2026-11-26', origin: 'yours' });
  const line = (askedPrice: number) => ({
    id: 'l1',
    name: 'Fern mug',
    askedPrice,
    upCharges: [{ size: 'XXL', amount: askedPrice / 10 }],
    placements: [
      { id: 'p1', name: 'Front', prints: [{ sizes: null, widthMm: 200, heightMm: askedPrice * 10 }] },
    ],
  });
  const job = (price: number, state: string) => ({ state, lines: [line(price)] });
  const blank = (price: number, temperature: number) => ({
    sizes: [{ name: 'L', price: rate(price, 'money/piece') }],
    maxTemperatureC: temperature,
  });
  const workshop = (wage: number, powerKw: number) => ({
    rates: { wage: rate(wage, 'money/h') },
    printers: [{ id: 'a1', name: 'Big printer', powerKw: rate(powerKw, 'kW') }],
  });
  const told = (kind: string, mine: unknown, theirs: unknown) =>
    draftDifferences(mine, theirs).map((difference) => {
      const said = differenceWords(difference, { kind, mine, theirs }, { formatter, nameOf });
      return `${said.place}: here ${said.mine}, in the copy ${said.theirs}`;
    });

  it('in a job: its state as the screen says it, its product by name, its amounts as money', () => {
    expect(told('job', job(18, 'quoted'), job(16, 'draft'))).toEqual([
      'state: here Quoted, in the copy Being priced',
      'asked price of “Fern mug”: here 18.00 USD, in the copy 16.00 USD',
      'amount of up-charge of size XXL of “Fern mug”: here 1.80 USD, in the copy 1.60 USD',
      'list of prints of placement “Front” of “Fern mug”: here 200 × 180 mm, in the copy 200 × 160 mm',
    ]);
  });

  it('in a blank: its size by name, each figure with its unit', () => {
    expect(told('blank', blank(2.4, 200), blank(2.6, 190))).toEqual([
      'price of size L: here 2.40 USD a piece, in the copy 2.60 USD a piece',
      'highest temperature: here 200 °C, in the copy 190 °C',
    ]);
  });

  it('in the rates: what the maker calls them, without their name in formulas', () => {
    expect(told('workshop', workshop(24, 0.3), workshop(26, 0.4))).toEqual([
      'Your pay: here 24.00 USD an hour, in the copy 26.00 USD an hour',
      'power kw of “Big printer”: here 0.3 kW, in the copy 0.4 kW',
    ]);
  });
});
