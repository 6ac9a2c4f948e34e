import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { yearCsv } from '@/lib/exports/yearCsv';
import { cellsOf } from '@/lib/names/cells';
import { inOrder } from '@/lib/stored/entriesInForce';
import { yearSpan } from '@/lib/year/yearSpan';
import { type YearNoted, type YearStanding, yearStanding } from '@/lib/year/yearStanding';
import { aYear, closed, delivered, entry, spent, worked } from '@/tests/lib/year/aYear';
import { cases } from '@/tests/tools/cases';

/* Laws of a year, whatever was noted of it and on whichever of two devices. */

const span = yearSpan(2026, 1);
const yearOf = (noted: YearNoted): YearStanding => yearStanding(noted, span, '2026-12-31');

const kinds = ['rent', 'blanks', 'power', 'machine', 'ink', 'other'] as const;
const day = fc.integer({ min: 1, max: 28 }).chain((date) =>
  fc.integer({ min: 1, max: 12 }).map((month) => {
    const two = (value: number) => String(value).padStart(2, '0');
    return `2026-${two(month)}-${two(date)}`;
  }),
);
const minor = fc.integer({ min: 1, max: 1_000_000 });
const file = fc.constantFrom(null, 'a', 'b', 'c');
const currency = fc.constantFrom('USD', 'USD', 'USD', 'EUR');
const device = fc.constantFrom('phone000', 'laptop00');
const what = fc.constantFrom('Rent', '=1+2', 'a, "b"', 'two\nlines', '-x');

const drawn = fc
  .record({
    expenses: fc.array(
      fc.record({ device, day, minor, file, currency, what, kind: fc.constantFrom(...kinds) }),
      {
        maxLength: 12,
      },
    ),
    deliveries: fc.array(fc.record({ device, day, file, freight: fc.option(minor) }), { maxLength: 6 }),
    payments: fc.array(fc.record({ device, day, minor, currency }), { maxLength: 6 }),
    hours: fc.array(fc.record({ device, day, minutes: fc.integer({ min: 1, max: 1440 }) }), { maxLength: 8 }),
    fairs: fc.array(fc.record({ day, gross: minor, tax: fc.integer({ min: 0, max: 5000 }) }), {
      maxLength: 3,
    }),
  })
  .map(({ expenses, deliveries, payments, hours, fairs }): YearNoted => {
    let count = 0;
    const id = (of: string) => `${of}-${++count}`;
    return aYear({
      expenses: expenses.map((one) =>
        spent(id(one.device), one.minor, { ...one, ...{ amountMinor: one.minor } }),
      ),
      goodsIn: deliveries.map((one) => delivered(id(one.device), { ...one, freightMinor: one.freight })),
      shopPayments: payments.map((one) =>
        entry('shopPayment', id(one.device), {
          ...{
            shopId: 'corner',
            statementId: 'x',
            day: one.day,
            amountMinor: one.minor,
            currency: one.currency,
          },
        }),
      ),
      hours: hours.map((one) => worked(id(one.device), one.minutes, { day: one.day })),
      closes: fairs.map(({ day: on, gross, tax }, at) =>
        closed(`close-${at}`, { stallDayId: `fair-${at}`, days: [on] }, { gross, tax }),
      ),
    });
  });

/** The same entries as they come from two devices, in any order, put in the one order by the store. */
const shuffled = (noted: YearNoted, turn: <Of>(list: readonly Of[]) => readonly Of[]): YearNoted => ({
  ...noted,
  expenses: inOrder(turn(noted.expenses)),
  goodsIn: inOrder(turn(noted.goodsIn)),
  shopPayments: inOrder(turn(noted.shopPayments)),
  hours: inOrder(turn(noted.hours)),
  closes: turn(noted.closes),
});

describe('a year', () => {
  it('is the same in whichever order two devices hand in what they noted', () => {
    fc.assert(
      fc.property(drawn, fc.infiniteStream(fc.nat()), (noted, draws) => {
        const turn = <Of>(list: readonly Of[]): readonly Of[] =>
          list
            .map((one) => ({ one, at: draws.next().value }))
            .toSorted((a, b) => a.at - b.at)
            .map(({ one }) => one);
        const settled = shuffled(noted, (list) => list);
        expect(yearOf(shuffled(noted, turn))).toEqual(yearOf(settled));
      }),
      cases(200),
    );
  });

  it('has less left by what is spent more, and so less pay; a machine takes nothing at once', () => {
    fc.assert(
      fc.property(drawn, minor, day, fc.constantFrom(...kinds), (noted, amount, on, kind) => {
        const before = yearOf(noted);
        const more = spent('phone000-900', amount, { day: on, kind, what: 'One more' });
        const after = yearOf({ ...noted, expenses: [...noted.expenses, more] });
        expect(after.leftMinor).toBe(before.leftMinor - (kind === 'machine' ? 0 : amount));
        if (before.payMinor !== null) expect(after.payMinor).toBeLessThanOrEqual(before.payMinor);
      }),
      cases(200),
    );
  });

  it('never adds another currency', () => {
    fc.assert(
      fc.property(drawn, minor, day, (noted, amount, on) => {
        const more = spent('phone000-900', amount, { day: on, currency: 'CHF' });
        const [before, after] = [yearOf(noted), yearOf({ ...noted, expenses: [...noted.expenses, more] })];
        expect(after.leftMinor).toBe(before.leftMinor);
        expect(after.other.find((one) => one.currency === 'CHF')).toMatchObject({ wentMinor: amount });
      }),
      cases(100),
    );
  });

  it('is in its file for the books to the cent, read back as any spreadsheet does', () => {
    const plain = { wayOf: () => '', aboutOf: () => ({ name: '', number: '' }) };
    fc.assert(
      fc.property(drawn, (noted) => {
        const year = yearOf(noted);
        const text = yearCsv(year.rows, year.hours, {
          ...plain,
          kindOf: (row) => ('flow' in row ? `${row.flow} ${row.kind}` : 'hours'),
          noteOf: ({ note }) => note,
          leftOutOf: (row) => ('leftOut' in row && row.leftOut !== null ? 'left out' : ''),
        });
        const [, ...rows] = cellsOf(text, ',').rows.map(({ cells }) => cells);
        const counted = rows.filter((cells) => cells[11] === '');
        const sum = (begins: string, at: number) =>
          counted
            .filter((cells) => cells[1]?.startsWith(begins))
            .reduce((all, cells) => all + Math.round(Number(cells[at]) * 100), 0);
        expect(rows).toHaveLength(year.rows.length + year.hours.length);
        expect(sum('taking', 6)).toBe(year.takingsMinor);
        expect(sum('taking', 8)).toBe(year.tax.minor);
        expect(sum('fee', 6)).toBe(year.feesMinor);
        expect(sum('tin', 6) + 0).toBe(year.tinMinor);
        expect(sum('expense', 6) + 0).toBe(0 - year.expensesMinor - year.machinesMinor);
        const hours = counted.reduce((all, cells) => all + Number(cells[9]), 0);
        expect(hours).toBeCloseTo(year.hoursWorked, 2);
      }),
      cases(200),
    );
  });
});
