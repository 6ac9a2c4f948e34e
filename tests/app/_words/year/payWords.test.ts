import { describe, expect, it } from 'vitest';
import { overheadAnswer, taxNotes } from '@/app/_words/year/moneyWords';
import { payAnswer, paySteps } from '@/app/_words/year/payWords';
import { yearSpan } from '@/lib/year/yearSpan';
import { type YearNoted, yearStanding } from '@/lib/year/yearStanding';
import { aYear, closed, entry, spent, standardOf, worked } from '@/tests/lib/year/aYear';

const yearOf = (noted: Partial<YearNoted>) => yearStanding(aYear(noted), yearSpan(2026, 1), '2026-12-31');
const figureOf = (noted: Partial<YearNoted>, name: RegExp) =>
  paySteps(yearOf(noted), 'en-US').find((step) => name.test(step.name));
const shopPaid = entry('shopPayment', 'a-9', {
  ...{ shopId: 'corner', statementId: 'a-8', day: '2026-05-01', amountMinor: 2500, currency: 'USD' },
});

describe('the steps from takings to what is left', () => {
  it('add up to what is left', () => {
    const noted = { closes: [closed('c')], expenses: [spent('a-1', 10000)] };
    const steps = paySteps(yearOf(noted), 'en-US');
    const moved = steps.slice(0, -1).reduce((sum, { minor }) => sum + (minor ?? 0), 0);
    // 535.00 − 10.50 − 2.00 − 35.00 − (6.00 + 100.00).
    expect(moved).toBe(38150);
    expect(steps.at(-1)).toMatchObject({ name: 'Left, USD', minor: 38150, figure: '381.50' });
  });

  it('never set 0 aside for tax of which no paper says anything', () => {
    expect(figureOf({ shopPayments: [shopPaid] }, /^Tax/)).toMatchObject({
      minor: null,
      figure: 'not known',
    });
    expect(figureOf({ shopPayments: [shopPaid], closes: [closed('c')] }, /^Tax/)).toMatchObject({
      ...{ name: 'Tax set aside, where papers say it', figure: '−35.00' },
    });
    expect(figureOf({ closes: [closed('c', {}, { tax: 0 })] }, /^Tax/)).toMatchObject({
      ...{ name: 'Tax set aside', figure: '0.00' },
    });
  });

  it('say where stock and wear are not known', () => {
    expect(figureOf({}, /^Stock/)).toMatchObject({ minor: null, figure: 'not known' });
    expect(figureOf({}, /^Wear/)).toMatchObject({ minor: null, figure: 'not known' });
    expect(figureOf({}, /^Takings/)).toMatchObject({ minor: null, figure: 'none noted' });
    const other = spent('a-1', 100, { currency: 'EUR' });
    expect(figureOf({ expenses: [other] }, /^Expenses/)).toMatchObject({ figure: 'none noted' });
  });
});

describe('the pay of an hour', () => {
  const hours = [worked('a-1', 120, { for: { kind: 'run', id: 'club' } })];

  it('is not known while no money at all is noted, however long was worked', () => {
    expect(payAnswer(yearOf({ hours }), 'en-US')).toEqual({
      ...{ key: 'Not known yet:', after: ' no money of this year is noted beside 2 h of work' },
    });
    const other = spent('a-2', 100, { currency: 'EUR' });
    expect(payAnswer(yearOf({ hours, expenses: [other] }), 'en-US').key).toBe('Not known yet:');
  });

  it('is what is left over the hours once any is', () => {
    // 10.00 spent, nothing taken, 2 h.
    expect(payAnswer(yearOf({ hours, expenses: [spent('a-2', 1000)] }), 'en-US').key).toBe(
      '−5.00 USD an hour,',
    );
  });
});

describe('tax in takings', () => {
  it('sends the maker to their local authority, for what papers say and for what none says', () => {
    const notes = taxNotes(yearOf({ shopPayments: [shopPaid], closes: [closed('c')] }), 'en-US');
    expect(notes).toHaveLength(2);
    expect(notes[1]).toMatch(/inside 25\.00 USD of it/);
    for (const note of notes) expect(note).toMatch(/Ask your local authority/);
  });
});

describe('overhead', () => {
  const hours = [worked('a-1', 120, { for: { kind: 'run', id: 'club' } })];
  const noted = { hours, standards: [standardOf('club')] };

  it('of which nothing paid is noted is not called carried too much', () => {
    // Two hours at 4.20.
    expect(overheadAnswer(yearOf(noted), 'en-US')).toEqual({
      ...{ key: '8.40 USD carried by work,', after: ' nothing paid for it is noted' },
    });
  });

  it('by quarter is that of its days, in a year that begins in another month too', () => {
    const expenses = [spent('a-2', 3000, { day: '2026-06-30' }), spent('a-3', 500, { day: '2027-03-31' })];
    const { quarters } = yearStanding(aYear({ ...noted, expenses }), yearSpan(2026, 4), '2027-03-31');
    expect(
      quarters.map(({ from, to, absorbedMinor, actualMinor }) => [from, to, absorbedMinor, actualMinor]),
    ).toEqual([
      ['2026-04-01', '2026-06-30', 840, 3000],
      ['2026-07-01', '2026-09-30', 0, 0],
      ['2026-10-01', '2026-12-31', 0, 0],
      ['2027-01-01', '2027-03-31', 0, 500],
    ]);
  });
});
