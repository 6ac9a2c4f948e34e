import { describe, expect, it } from 'vitest';
import { costTableRows } from '@/app/_docket/costs/costTableRows';
import { moneyGoes } from '@/app/_docket/costs/moneyGoes';
import { shownColumn } from '@/app/_docket/costs/shownColumn';
import { club, clubWith, mugs, TODAY } from '@/tests/fixtures/clubJob';
import { costed } from '@/tests/fixtures/costed';

const { sheet } = costed(club());
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
      byThemselves: [null],
      total: '2,000,000,000',
    });
  });
});

describe('where the money goes', () => {
  it('is one sentence with the three largest lines and ink', () => {
    expect(moneyGoes(sheet, 'en-US').replaceAll('\u00a0', ' ')).toBe(
      'Where the money goes: blanks with freight 46 %, your time 32 %, overhead 8 %, ink 1 %.',
    );
  });
});
