import { describe, expect, it } from 'vitest';
import { hourNoteWords } from '@/app/_words/year/yearNames';
import { yearCsv } from '@/lib/exports/yearCsv';
import { yearSpan } from '@/lib/year/yearSpan';
import { yearStanding } from '@/lib/year/yearStanding';
import { aYear, closed, delivered, spent, worked } from '@/tests/lib/year/aYear';

const words = {
  kindOf: (row: { readonly kind: string } | { readonly minutes: number }) =>
    'kind' in row ? row.kind : 'hours',
  noteOf: hourNoteWords,
  aboutOf: (about: { readonly kind: string }) =>
    about.kind === 'order' ? { name: 'Club, the', number: '26-014A' } : { name: '', number: '' },
  wayOf: () => '',
  leftOutOf: (row: object) => ('leftOut' in row && row.leftOut !== null ? 'left out' : ''),
};
const csvOf = (noted: Parameters<typeof aYear>[0]) => {
  const { rows, hours } = yearStanding(aYear(noted), yearSpan(2026, 1), '2026-12-31');
  return yearCsv(rows, hours, words).split('\r\n');
};
const HEADER = 'date,kind,what,for,number,way,amount,currency,tax inside,hours,receipt,not counted,entry';

describe('the year for the books', () => {
  it('has a header and a row for each entry, by day, with plain numbers in all digits of the currency', () => {
    expect(
      csvOf({
        expenses: [spent('a-1', 50000, { orderId: 'order-1', file: 'a' })],
        closes: [closed('c', {}, { difference: 0, spent: 0 })],
        hours: [worked('a-2', 50)],
      }),
    ).toEqual([
      HEADER,
      '2026-06-10,rent,Rent,"Club, the",26-014A,,-500.00,USD,,,bill a.pdf,,a-1',
      '2026-06-13,stallTakings,Spring Fair,,,,535.00,USD,35.00,,,,c',
      '2026-06-13,cardFee,Spring Fair,,,,-10.50,USD,,,,,c',
      '2026-06-13,hours,,,,,,,,11,,,c',
      '2026-06-13,hours,"as planned, not noted",,,,,,,12,,,c',
      '2026-06-20,hours,,,,,,,,0.8333,,,a-2',
      '',
    ]);
  });

  it('names what is in no sum, and writes each currency in its own digits', () => {
    const rows = csvOf({
      expenses: [
        spent('a-1', 900, { currency: 'JPY' }),
        spent('a-2', 1234, { currency: 'BHD', what: 'Ink', file: 'a' }),
      ],
      goodsIn: [delivered('a-3', { file: 'a', freightMinor: null })],
    });
    expect(rows.slice(1, 5)).toEqual([
      '2026-06-10,rent,Rent,,,,-900,JPY,,,,left out,a-1',
      '2026-06-10,rent,Ink,,,,-1.234,BHD,,,bill a.pdf,left out,a-2',
      '2026-06-12,blanks,,,,,-200.00,USD,,,bill a.pdf,,a-3',
      '2026-06-12,paper,,,,,-30.00,USD,,,bill a.pdf,,a-3',
    ]);
  });

  it.each([
    ['=1+2', "'=1+2"],
    ['-2+3', "'-2+3"],
    ['a, b', '"a, b"'],
    ['a "b"', '"a ""b"""'],
    ['two\nlines', '"two\nlines"'],
  ])('never lets what was noted run as a formula or break its row: %j', (what, cell) => {
    expect(csvOf({ expenses: [spent('a-1', 1, { what })] })[1]).toBe(
      `2026-06-10,rent,${cell},,,,-0.01,USD,,,,,a-1`,
    );
  });
});
