import { describe, expect, it } from 'vitest';
import { foldLearned } from '@/lib/learning/foldLearned';
import type { LearnedFrom } from '@/lib/learning/learnedFrom';
import type { Rate, RateOrigin } from '@/shared/schemas/rate';
import { actual, clubFacts } from '@/tests/fixtures/clubStandard';
import { learnedFrom, learnedRun } from '@/tests/fixtures/learnedRun';

const held = (date: string, origin: RateOrigin = 'yours'): Rate<'money/piece'> => ({
  ...{ value: 4.7, unit: 'money/piece', date, origin },
});

/** All sizes of the shirt hold one price, and the sheet one. */
function holding(price: Rate<'money/piece'>, more: Partial<LearnedFrom> = {}): LearnedFrom {
  const from = learnedFrom(more);
  const { workshop, blanks } = from.documents;
  if (workshop === null) throw new Error('a workshop');
  const sheets = workshop.body.sheets.map((sheet) => ({
    ...sheet,
    price: { ...price, value: 0.14, unit: 'money/sheet' as const },
  }));
  return {
    ...from,
    documents: {
      ...from.documents,
      workshop: { ...workshop, body: { ...workshop.body, sheets } },
      blanks: blanks.map(({ id, body }) => ({
        ...{ id, body: { ...body, sizes: body.sizes.map((size) => ({ ...size, price })) } },
      })),
    },
  };
}

const delivered = (day: string) => [
  { item: { kind: 'blank' as const, blankId: 'white-shirt', size: 'M' }, each: 4.95, day },
  { item: { kind: 'paper' as const, sheetId: 'letter' }, each: 0.15, day },
];

const pricesOf = (from: LearnedFrom) =>
  foldLearned(from)
    .filter(({ unit, subject }) => unit === 'money' && (subject.of !== 'blankPrice' || subject.size === 'M'))
    .map(({ subject, measured }) => [subject.of, measured]);

// What the worked run cost was noted on 2026-12-12.
describe('a price that the maker set', () => {
  const runs = { runs: [] };

  it('after a delivery stands against its old bill', () => {
    expect(pricesOf(holding(held('2026-11-02'), { ...runs, prices: delivered('2026-11-01') }))).toEqual([]);
  });

  it('on its day or before gives way to it', () => {
    const both = [
      ['blankPrice', 4.95],
      ['sheetPrice', 0.15],
    ];
    for (const day of ['2026-11-01', '2026-10-31'])
      expect(pricesOf(holding(held(day), { ...runs, prices: delivered('2026-11-01') })), day).toEqual(both);
  });

  it('is none where it is a typical one: nobody set it against a bill', () => {
    const typical = held('2026-12-31', 'typical');
    expect(pricesOf(holding(typical, { ...runs, prices: delivered('2026-11-01') }))).toHaveLength(2);
  });

  it('after what a run cost was noted stands against that, too', () => {
    expect(pricesOf(holding(held('2026-12-13')))).toEqual([]);
    // 4.95 for 4.83 planned is 0.12 more than 4.60; 8.70 for 58 sheets.
    expect(pricesOf(holding(held('2026-12-12')))).toEqual([
      ['blankPrice', 4.72],
      ['sheetPrice', 0.15],
    ]);
  });

  it('after a delivery gives way to what a later run cost', () => {
    const from = holding(held('2026-12-01'), { prices: delivered('2026-11-01') });
    expect(pricesOf(from)).toEqual([
      ['blankPrice', 4.72],
      ['sheetPrice', expect.closeTo(0.15, 12)],
    ]);
  });
});

it('what was typed last is that of the run begun last', () => {
  const facts = clubFacts({ reprints: null });
  // 41 at 5.35: 0.52 more than 4.83 planned, so 4.60 becomes 5.12.
  const dearer = { ...facts, actuals: [actual({ of: 'blanks', quantity: 41, amountMinor: 21_935 })] };
  const [first, last] = [learnedRun(facts, 'z'), learnedRun(dearer, 'a')];
  expect(pricesOf(holding(held('2026-01-31'), { runs: [first, last] }))[0]).toEqual(['blankPrice', 5.12]);
});
