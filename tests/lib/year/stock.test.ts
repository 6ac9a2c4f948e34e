import { describe, expect, it } from 'vitest';
import { runMoves } from '@/lib/stock/runMoves';
import type { StockEntry } from '@/lib/stock/stockEntry';
import { stockValue } from '@/lib/stock/stockValue';
import { stockWorth } from '@/lib/stock/stockWorth';
import { runDone } from '@/lib/variances/runDone';
import { runResult } from '@/lib/variances/runResult';
import { boughtAlone } from '@/lib/year/boughtAlone';
import { stockAtStart } from '@/lib/year/stockAtStart';
import { type DatedStock, type StockDaysTold, stockByDay } from '@/lib/year/stockByDay';
import { yearSpan } from '@/lib/year/yearSpan';
import { yearStanding } from '@/lib/year/yearStanding';
import type { StockMove } from '@/shared/schemas/stock';
import { clubFacts, clubStandard } from '@/tests/fixtures/clubStandard';
import { aYear, closed, delivered, entry, spent, worked } from './aYear';

const blank = (size: string) => ({
  item: { kind: 'blank', blankId: 'white-shirt', size, lot: null } as const,
  place: { kind: 'home' } as const,
  grade: 'first' as const,
});
const moved = (id: string, quantity: number, more: Partial<StockMove> = {}) =>
  entry('stockMove', id, {
    ...{ ...blank('M'), quantity, cause: 'bought', reference: null, unitCost: null },
    ...more,
  });
const counted = (id: string, size: string, quantity: number) =>
  entry('stockCount', id, { ...blank(size), quantity });
/** Moments are days of 2025 and 2026, counted from 28 December. */
const dayOf = (at: number) => new Date(Date.UTC(2025, 11, 28 + at)).toISOString().slice(0, 10);
const on = <Of extends StockEntry>(at: number, one: Of): Of => ({ ...one, at });
const nothing: StockDaysTold = { goodsIn: [], runSteps: [], closes: [], dayOf };
const worthAt = (noted: readonly DatedStock[]) =>
  stockWorth(stockValue(noted.map(({ entry: one }) => one)), 'USD');

describe('stock at the beginning of a year', () => {
  it('is what was noted before, and what the first count of a pile found', () => {
    const noted = stockByDay(
      [
        on(0, moved('a-1', 5, blank('S'))),
        on(60, counted('a-2', 'M', 12)),
        on(61, counted('a-3', 'M', 11)),
        on(62, moved('a-4', 5, blank('L'))),
        on(63, counted('a-5', 'L', 5)),
      ],
      nothing,
    );
    expect(stockAtStart(noted, '2026-01-01').map(({ entry: { id } }) => id)).toEqual(['a-1', 'a-2']);
  });
});

describe('what came with a paper is of the day of the paper', () => {
  const cost = { minor: 20_000, currency: 'USD', per: 45 } as const;
  /** A bill of 28 December, noted with its 45 blanks on 3 January. */
  const late = { ...delivered('a-1', { day: '2025-12-28' }), at: 6 };
  const lies = on(6, moved('a-2', 45, { unitCost: cost }));

  it('a delivery: goods and bill are in one year, and the next has earned nothing by them', () => {
    const noted = stockByDay([lies], { ...nothing, goodsIn: [late] });
    expect(noted.map(({ day }) => day)).toEqual(['2025-12-28']);
    expect(worthAt(stockAtStart(noted, '2026-01-01')).paid).toEqual([{ currency: 'USD', minor: 20_000 }]);
    // Bought without a delivery it is of the day it was noted on.
    expect(stockByDay([lies], nothing)[0]?.day).toBe('2026-01-03');
    // A move noted at another moment is none of the delivery's.
    expect(stockByDay([{ ...lies, at: 5 }], { ...nothing, goodsIn: [late] })[0]?.day).toBe('2026-01-02');
  });

  it('is counted by a count between that day and the noting of it', () => {
    // On New Year's Eve all 45 lay there, though nobody had noted their bill.
    const count = on(3, counted('b-1', 'M', 45));
    const noted = stockByDay([count, lies], { ...nothing, goodsIn: [late] });
    const [atEnd] = stockValue(noted.map(({ entry: one }) => one));
    expect(atEnd).toMatchObject({ quantity: 45, unknown: 0 });
  });

  it('a close of a run or a stall day, booked when it was closed or later', () => {
    const step = (id: string, at: number, day: string) => ({
      ...entry('runStep', id, {
        ...{ runId: 'club', standardId: null, day },
        step: { what: 'closed' as const, note: '' },
      }),
      at,
    });
    const told: StockDaysTold = {
      ...nothing,
      runSteps: [step('a-1', 4, '2025-12-30'), step('a-2', 40, '2026-02-06')],
      closes: [closed('a-3', { days: ['2025-12-20', '2025-12-21'] })],
    };
    const of = (kind: string, id: string) => ({ cause: 'used' as const, reference: { kind, id } });
    const days = [
      moved('a-4', -1, of('run', 'club')),
      moved('a-5', -1, of('run', 'other')),
      moved('a-6', -1, of('paper', 'a-3')),
    ].map((one) => stockByDay([on(8, one)], told)[0]?.day);
    expect(days).toEqual(['2025-12-30', '2026-01-05', '2025-12-21']);
  });
});

describe('stock bought with a price and without a delivery', () => {
  const cost = { minor: 450, currency: 'USD' } as const;
  const span = yearSpan(2026, 1);
  const priced = (id: string, more: Partial<StockMove> = {}) =>
    on(6, moved(id, 10, { unitCost: cost, ...more }));
  const late = { ...delivered('b-1', { day: '2026-01-02' }), at: 6 };

  it('is told as perhaps not paid, as far as no expense for goods tells of it', () => {
    const noted = stockByDay(
      [
        priced('a-1'),
        priced('a-2', { unitCost: null }),
        priced('a-3', { unitCost: { minor: 450, currency: 'EUR' } }),
        priced('b-2'),
      ],
      { ...nothing, goodsIn: [late] },
    );
    // 10 at 4.50; those of the delivery, in another currency or without a price are none.
    expect(boughtAlone(noted, span, 'USD')).toBe(4_500);
    expect(boughtAlone(noted, yearSpan(2025, 1), 'USD')).toBe(0);
    const untold = (expenses: ReturnType<typeof spent>[]) =>
      yearStanding(
        aYear({
          ...{ expenses, goodsIn: [late] },
          stock: { atStart: stockWorth([]), atEnd: stockWorth([]), aloneMinor: 4_500 },
        }),
        span,
        '2026-12-31',
      ).stockUntoldMinor;
    expect(untold([])).toBe(4_500);
    expect(untold([spent('a-9', 3_000, { kind: 'blanks' }), spent('a-10', 900)])).toBe(1_500);
    expect(untold([spent('a-9', 5_000, { kind: 'ink' })])).toBe(0);
  });
});

describe('a year in which one run was made to stock and nothing was sold', () => {
  const standard = {
    body: { ...clubStandard(), works: clubStandard().works.map((work) => ({ ...work, orderId: null })) },
  };
  const facts = clubFacts({ reprints: 0 });
  const result = runResult(standard, {
    facts,
    paid: { blank: () => null, sheet: () => null },
    orderHours: [],
  });
  const { moves } = runMoves(runDone({ ...facts, runId: 'run' }, standard, result, []));
  const sizes = ['S', 'M', 'L', 'XL', '2XL', '3XL'].map((size, at) => ({
    size,
    many: [4, 11, 13, 8, 4, 1][at] ?? 0,
  }));
  const bought = sizes.map(({ size, many }, at) =>
    moved(`a-${at + 1}`, many, { ...blank(size), unitCost: { minor: 495, currency: 'USD' } }),
  );
  const paper = moved('a-7', 58, {
    ...{ item: { kind: 'paper', sheetId: 'letter' }, unitCost: { minor: 15, currency: 'USD' } },
  });
  const booked = moves.map((move, at) => entry('stockMove', `a-${at + 8}`, move));
  const noted = stockByDay([...bought, paper, ...booked], nothing);

  it('pays nothing for the hours that lie in its shirts: they are worth what of them was bought', () => {
    // 32 at 5.53, 4 at 7.13, one at 8.20; all 41 blanks and 58 sheets are used.
    const atEnd = worthAt(noted);
    expect(atEnd.paid).toEqual([{ currency: 'USD', minor: 17_696 + 2_852 + 820 }]);
    // Bought: 41 at 4.95, 58 at 0.15, 44 mL at 0.16, and tape, power and bags of 37 for some 10.85.
    const row = { ordered: null, faulty: 0, fault: null, lot: null };
    const bill = delivered('a-90', {
      rows: [
        {
          ...{ ...row, item: { kind: 'blank', blankId: 'white-shirt', size: 'M' } },
          ...{ counted: 41, amountMinor: 20_295 },
        },
        { ...row, item: { kind: 'paper', sheetId: 'letter' }, counted: 58, amountMinor: 870 },
        { ...row, item: { kind: 'ink', printerId: 'p', name: 'Black' }, counted: 44, amountMinor: 704 },
        { ...row, item: { kind: 'consumable', consumableId: 'tape' }, counted: 1, amountMinor: 1_085 },
      ],
      freightMinor: null,
    });
    const year = yearStanding(
      aYear({
        goodsIn: [bill],
        hours: [worked('a-91', 504)],
        stock: { atStart: stockWorth([]), atEnd, aloneMinor: 0 },
      }),
      yearSpan(2026, 1),
      '2026-12-31',
    );
    // 213.68 in stock for 229.54 spent: what 1.5 blanks, 5 sheets and 9 mL too many, and dearer ones, cost.
    expect(year.stockMinor).toBe(21_368);
    expect(year.leftMinor).toBe(21_368 - 22_954);
    expect(year.payMinor).toBe(-189);
  });
});
