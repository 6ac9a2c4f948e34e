import { describe, expect, it } from 'vitest';
import { formatterFor } from '@/app/_words/formatter';
import { differenceWords } from '@/app/_words/store/differenceWords';

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
      { place: 'blank of the line of line 1', mine: '“White mug”', theirs: 'another one' },
    ],
    [['lines', 'l2'], undefined, { name: 'Bags' }, { place: 'line 2', mine: 'nothing', theirs: '“Bags”' }],
    [['sewnLabel'], 'notStated', true, { place: 'sewn label', mine: 'not stated', theirs: 'yes' }],
    [['quantities'], [], [1, 2], { place: 'list of quantities', mine: 'nothing', theirs: '2 entries' }],
  ] as const)('says of %j what is here and what the copy has, never an id', (path, mine, theirs, told) => {
    expect(words(path, mine, theirs)).toEqual(told);
  });
});
