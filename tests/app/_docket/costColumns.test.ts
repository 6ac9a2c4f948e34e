import { describe, expect, it } from 'vitest';
import { costOverview } from '@/app/_docket/costs/costOverview';
import { costTableRows } from '@/app/_docket/costs/costTableRows';
import { shownColumn } from '@/app/_docket/costs/shownColumn';
import { costAnswer, percentWords } from '@/app/_words/docket/costWords';
import { shareWords } from '@/app/_words/docket/shareWords';
import { groupShares } from '@/lib/grid/costGroups';
import { club, clubWith, mugs, TODAY } from '@/tests/fixtures/clubJob';
import { costed } from '@/tests/fixtures/costed';

const { sheet } = costed(club());
const lineId = sheet.lineIds[0] ?? '';
const columnsOf = (of: typeof sheet) => of.cases.map((_, index) => ({ index }));
const cents = (text: string) => Math.round(Number(text.replace(/,/g, '')) * 100);

describe('the written cost table', () => {
  const amount = { value: 10, unit: 'money', date: TODAY, origin: 'yours' };
  const withOwn = clubWith({
    'job.ownRows': [
      {
        id: 'own_fee',
        label: 'Pattern fee',
        outOfPocket: true,
        cost: { kind: 'driver', driver: 'order', amount },
      },
      { id: 'own_pins', label: 'Pins', outOfPocket: true, cost: { kind: 'formula', formula: '1 / 3' } },
    ],
  });

  it.each([
    ['the worked example', club()],
    ['with rows of its own', withOwn],
    ['mugs', mugs()],
  ])('has parts that add exactly to each shown total: %s', (_, input) => {
    const of = costed(input).sheet;
    const [lines, total] = costTableRows(of, columnsOf(of), 'en-US');
    const sums = (pick: (row: { texts: readonly string[]; whole: string | null }) => string) =>
      lines?.rows.reduce((sum, row) => sum + cents(pick(row)), 0);
    columnsOf(of).forEach((_, at) => {
      expect(sums(({ texts }) => texts[at] ?? '')).toBe(cents(total?.rows[0]?.texts[at] ?? ''));
    });
    expect(sums(({ whole }) => whole ?? '')).toBe(cents(total?.rows[0]?.whole ?? ''));
  });

  it('shows each own row by itself, where the own rows belong', () => {
    const of = costed(withOwn).sheet;
    const labels = costTableRows(of, columnsOf(of), 'en-US')[0]?.rows.map(({ label }) => label) ?? [];
    expect(
      labels.slice(labels.indexOf('Delivery, selling day'), labels.indexOf('Normal spoilage') + 1),
    ).toEqual(['Delivery, selling day', 'Pattern fee', 'Pins', 'Normal spoilage']);
  });

  it('has no line for own rows where there are none', () => {
    expect(costTableRows(sheet, [], 'en-US')[0]?.rows).toHaveLength(12);
  });

  it('puts the cost of one more and the three times beneath the total', () => {
    const [, , beside] = costTableRows(sheet, [{ index: 2 }], 'en-US');
    expect(beside?.rows.map(({ label, texts, whole }) => [label, texts[0], whole])).toEqual([
      ['Cost of one more', '7.64', null],
      ['Paid time', '12.2 min', '7 h 32 min'],
      ['Unattended time', '4 min', '2 h 27 min'],
      ['Elapsed time, nothing overlapped', '16.2 min', '10 h'],
    ]);
  });

  it('is written in whole units beyond the largest amount that is kept to the cent', () => {
    const huge = { ...sheet, values: { ...sheet.values, blanks: [2e9], fullCost: [2e9] } };
    expect(shownColumn(huge, ['blanks'], 0, 'en-US')).toEqual({
      parts: ['2,000,000,000'],
      minor: null,
      byThemselves: [null],
      total: '2,000,000,000',
    });
  });
});

describe('the cost as it is looked at first', () => {
  it('has seven groups that add exactly to the shown total, in whole per cent that add to a hundred', () => {
    const { groups, total } = costOverview(sheet, lineId, 'en-US');
    expect(total).toBe('411.79');
    expect(groups.map(({ text, percent }) => `${text} ${percent}`)).toEqual([
      '188.20 46',
      '132.51 32',
      '30.92 7',
      '23.55 6',
      '17.09 4',
      '16.25 4',
      '3.27 1',
    ]);
    expect(groups.reduce((sum, { text }) => sum + cents(text), 0)).toBe(cents(total));
    expect(groups.reduce((sum, { percent }) => sum + percent, 0)).toBe(100);
  });

  it('tells one piece by size, one more of the commonest, and how long it takes', () => {
    expect(costOverview(sheet, lineId, 'en-US').each.map(({ label, text }) => `${label} ${text}`)).toEqual([
      'S to XL 10.88',
      '2XL 12.51',
      '3XL 13.60',
      'one more L 7.64',
      'start to finish 10 h',
    ]);
  });

  it('says what a piece costs and the two largest parts of it', () => {
    const { before, key, after } = costAnswer(sheet, { one: 'shirt', many: 'shirts' }, 'en-US');
    expect(`${before}${key}${after}`).toBe(
      'A shirt costs 11.13: nearly half is the blank, a third your time',
    );
    expect(key).toBe('11.13');
  });

  it.each([
    [0.457, 'nearly half'],
    [0.5, 'half'],
    [0.322, 'a third'],
    [0.35, '35 %'],
    [0.08, '8 %'],
    [0.71, 'nearly three quarters'],
    [0.99, '99 %'],
  ])('calls a share of %d “%s”', (share, words) => {
    expect(shareWords(share, 'en-US')).toBe(words);
  });
});

describe('a share of the cost', () => {
  const piece = { one: 'shirt', many: 'shirts' };
  const ofThree = (blanks: number, labour: number, overhead: number) => {
    const none = Object.keys(sheet.values).map((id) => [id, sheet.cases.map(() => 0).concat(0)] as const);
    const whole = (amount: number) => sheet.cases.map(() => 0).concat(amount);
    const values = { ...Object.fromEntries(none), goodPieces: whole(10) };
    return {
      ...sheet,
      fullCost: blanks + labour + overhead,
      values: { ...values, blanks: whole(blanks), labour: whole(labour), overhead: whole(overhead) },
    };
  };

  it('is rounded once, so that the sentence says what the bar says', () => {
    // 41.55, 36.60 and 21.85 of 100: 41 + 36 + 21 are 98, and the two that lack most, 0.85 and 0.60, get one each.
    const three = ofThree(41.55, 36.6, 21.85);
    expect(groupShares(three).map(({ percent }) => percent)).toEqual([41, 37, 22]);
    expect(costAnswer(three, piece, 'en-US').after).toBe(': 41 % is the blank, 37 % your time');
  });

  it('is under 1 % and not nothing where it rounds to nothing', () => {
    const [, , small] = groupShares(ofThree(60, 39.7, 0.3));
    expect(percentWords(small?.percent ?? Number.NaN)).toBe('under 1 %');
    expect(percentWords(1)).toBe('1 %');
  });

  it('stands beside a cost that says it is without tax where prices have it inside', () => {
    const inside = costed(
      clubWith({
        'workshop.channels.0.taxMode': 'inside',
        'workshop.channels.0.tax': { value: 0.19, unit: 'share', date: TODAY, origin: 'yours' },
      }),
    ).sheet;
    expect(costAnswer(inside, piece, 'en-US').after).toMatch(/^ without tax: /);
    expect(costAnswer(sheet, piece, 'en-US').after).toMatch(/^: /);
  });
});
