import { describe, expect, it } from 'vitest';
import { formatterFor } from '@/app/_words/formatter';
import { standingLine } from '@/app/_words/priceLists/standingLineWords';
import { agedWords, standingWords } from '@/app/_words/priceLists/standingWords';
import type { ItemState, WornPrice } from '@/lib/priceLists/compareItem';
import type { MinorUnits } from '@/shared/money';
import { anItem } from '@/tests/lib/priceLists/aVersion';

const context = {
  locale: 'en-US',
  units: { length: 'in', temperature: 'F', pressure: 'psi', volume: 'mL', distance: 'mi' },
  currency: 'USD',
} as const;

const worn: WornPrice = {
  from: 12,
  to: 23,
  size: 'L',
  at: 12,
  listed: 24_000 as MinorUnits,
  today: 25_800 as MinorUnits,
  marginThen: 0.302,
  marginNow: 0.241,
};
const moved = { label: 'Blank price, White shirt L', unit: 'money/piece', was: 4.6, is: 5.15 };

type Compared = Extract<ItemState, { kind: 'compared' }>;
const compared = (fields: Partial<Compared>): Compared => ({
  kind: 'compared',
  worn: [],
  moved: [],
  aged: [],
  goneSizes: [],
  ...fields,
});

const told = (state: Parameters<typeof standingWords>[1], item = anItem()) =>
  standingWords(item, state, context).map(({ sentence, prices = [], detail }) =>
    [sentence, ...prices, detail].join(' '),
  );

describe('how an issued item stands', () => {
  it('says which price no longer holds, by how much, what it would be and which rate moved', () => {
    const [words = '', ...more] = told(compared({ worn: [worn], moved: [moved] }));
    expect(more).toEqual([]);
    expect(words).toBe(
      'Club shirt: 1 price no longer holds. 12 to 23 pieces: 20.00 USD now leaves 24.1 % in size L, was 30.2 %; today’s price would be 21.50 USD. Moved since: Blank price, White shirt L 4.60 USD a piece → 5.15 USD a piece.',
    );
  });

  it('names every price of an item and what moved only once', () => {
    const open = { ...worn, from: 24, to: null, at: 24 };
    const [words = '', ...more] = told(compared({ worn: [worn, open], moved: [moved] }));
    expect(more).toEqual([]);
    expect(words).toContain('2 prices no longer hold');
    expect(words).toContain('24 pieces and up: ');
    expect(words.match(/Moved since/g)).toHaveLength(1);
  });

  it('says nothing where all holds, and while the sums are made', () => {
    expect(told(compared({ moved: [moved] }))).toEqual([]);
    expect(told({ kind: 'asked' })).toEqual([]);
  });

  it('speaks of what an order pays where pieces have no price of their own', () => {
    const [words = ''] = told(compared({ worn: [worn] }), anItem({ selling: 'capped' }));
    expect(words).toContain('12 to 23 pieces: 240.00 USD for 12 now leaves 24.1 %');
    expect(words).toContain('today it would be 258.00 USD.');
  });

  it.each([
    [{ kind: 'gone' }, 'The job of Club shirt is no longer here.'],
    [{ kind: 'noLine' }, 'Club shirt is no longer a line of its job'],
    [{ kind: 'otherTerms' }, 'another currency'],
    [{ kind: 'stopped', why: null }, 'The job of Club shirt is stopped.'],
  ] as const)('says of %j what it means', (state, words) => {
    expect(told(state).join(' ')).toContain(words);
  });
});

describe('rates nobody has looked at', () => {
  it('are named once with their days, the oldest first, whichever items stand on them', () => {
    const pay = { label: 'Your pay', days: 91 };
    const power = { label: 'Electricity', days: 120 };
    const words = agedWords([compared({ aged: [pay, power] }), compared({ aged: [pay] })], context);
    expect(words?.sentence).toBe(
      'Rates nobody has looked at for more than 90 days: Electricity (120 days), Your pay (91 days).',
    );
  });

  it('are not spoken of where there are none', () => {
    expect(agedWords([compared({}), { kind: 'gone' }], context)).toBeNull();
  });
});

describe('how a version stands in one line', () => {
  const formatter = formatterFor(context);

  it.each([
    [[{ kind: 'asked' }, compared({})], 'prices are being looked at'],
    [[compared({})], 'all prices hold'],
    [[compared({ worn: [worn] })], '1 price no longer holds'],
    [
      [compared({ worn: [worn, worn] }), { kind: 'gone' }],
      '2 prices no longer hold, 1 item cannot be compared',
    ],
  ] as const)('is told of %#', (standings, words) => {
    expect(standingLine(standings, formatter)).toBe(words);
  });
});
