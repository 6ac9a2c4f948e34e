import { describe, expect, it } from 'vitest';
import { actualTroubles } from '@/lib/variances/actualTroubles';
import { type RunResult, runResult } from '@/lib/variances/runResult';
import type { GapLine } from '@/shared/schemas/making/runEvents';
import {
  actual,
  clubFacts,
  clubPressings,
  clubStandard,
  hour,
  noFacts,
  noteOf,
} from '@/tests/fixtures/clubStandard';

const paid = { blank: () => null, sheet: () => null };
const resultOf = (facts: Partial<typeof noFacts>): RunResult =>
  runResult({ body: clubStandard() }, { facts: { ...noFacts, ...facts }, paid, orderHours: [] });
const bar = (result: RunResult, line: GapLine) => result.bars.find((one) => one.line === line);
const minors = (result: RunResult) => Object.fromEntries(result.bars.map(({ line, minor }) => [line, minor]));

/*
 * Worked by hand for the club's shirts: (4.8297 − 4.95) · 41, (39.52 − 41) · 4.83, (0.14 − 0.15) · 58,
 * (52.90 − 58) · 0.14, (35.10 − 44) · 0.16, (7.538 − 8.40) · 18 and · 4.20.
 */
describe('the worked run', () => {
  const result = resultOf(clubFacts({ reprints: 622 }));

  it('has each gap to the cent', () => {
    expect(minors(result)).toEqual({
      ...{ output: 0, revenue: 0, blanksPrice: -493, blanksUsage: -715, paperPrice: -58, paperUsage: -71 },
      ...{ inkUsage: -142, labour: -1552, overhead: -362, freight: 0, otherCost: 0, fees: 0, reprints: 0 },
    });
  });

  it('goes from the profit of the standard to what came, in shown cents', () => {
    expect(result.sum).toBe(-3393);
    expect(result.bridge).toEqual({ from: 28_837, to: 25_444 });
  });

  it('paid 48.29 an hour of 56.26, at a margin of 35.8 of 40.5 %', () => {
    expect(result.came?.payPerHour).toBeCloseTo(48.29, 2);
    expect(result.quoted?.payPerHour).toBeCloseTo(56.26, 2);
    expect(result.came?.margin).toBeCloseTo(0.358, 3);
    expect(result.quoted?.margin).toBeCloseTo(0.405, 3);
  });

  it('shares the blanks over what they went for: two ghosts half of it, a speck and a badge reversed a quarter each', () => {
    expect(result.lost.map(({ fault, pieces }) => [fault, pieces])).toEqual([
      ['ghost', 2],
      ['specks', 1],
      ['reversed', 1],
    ]);
    expect(result.lost[0]?.amount).toBeCloseTo(-7.1497 / 2, 3);
  });

  it('keeps what is held for reprints where none came, as a bar of its own, once it is closed', () => {
    const closed = noteOf('runStep', {
      ...{ runId: 'run', standardId: null, day: '2026-12-12' },
      step: { what: 'closed' as const, note: '' },
    });
    const kept = resultOf({ ...clubFacts({ reprints: null }), steps: [closed] });
    expect(bar(kept, 'reprints')?.minor).toBe(622);
    expect(kept.bridge).toEqual({ from: 28_837, to: 26_066 });
  });

  it('counts what is held for reprints as spent until it is closed', () => {
    const open = resultOf(clubFacts({ reprints: null }));
    expect(bar(open, 'reprints')?.minor).toBe(0);
    expect(open.bridge).toEqual({ from: 28_837, to: 25_444 });
  });
});

describe('what nobody noted', () => {
  it('is as the standard has it, and says so', () => {
    const result = resultOf({ actuals: [actual({ of: 'reprints', amountMinor: 622 })] });
    expect(result.bridge).toEqual({ from: 28_837, to: 28_837 });
    expect(bar(result, 'labour')?.actual).toBe('standard');
    expect(bar(result, 'blanksPrice')?.actual).toBe('standard');
    expect(bar(result, 'reprints')?.actual).toBe('typed');
  });

  it('counts blanks at the press and those found faulty before it', () => {
    const fault = noteOf('blankFault', {
      ...{ runId: 'run', blankId: 'white-shirt', size: 'M', lot: null, pieces: 2, fault: 'hole' as const },
    });
    const result = resultOf({ pressings: clubPressings(), blankFaults: [fault] });
    expect(result.actuals.blanks).toMatchObject({ quantity: 43, quantityFrom: 'counted' });
    expect(result.lost).toContainEqual(expect.objectContaining({ at: 'blank', fault: 'hole', pieces: 2 }));
  });

  it('takes as many blanks as came out where nobody noted the first press, and says so', () => {
    const pressings = clubPressings().filter(({ body }) => body.placementId === 'badge');
    const result = resultOf({ pressings });
    // 37 good badges and two lost; no back was noted.
    expect(result.actuals.blanks).toMatchObject({ quantity: 39, quantityFrom: 'counted' });
    expect(actualTroubles(result, [])).toEqual([{ what: 'moreLostThanStarted', lost: 2, started: 0 }]);
    const kept = resultOf({ pressings: pressings.filter(({ body }) => body.result === 'good') });
    expect(kept.actuals.blanks.quantity).toBe(37);
    expect(actualTroubles(kept, [])).toEqual([{ what: 'moreCameThanStarted', came: 37, started: 0 }]);
  });

  it('counts no money of another currency as its own, and says so', () => {
    const foreign = <Of extends { readonly body: object }>(entry: Of) => ({
      ...entry,
      body: { ...entry.body, currency: 'EUR' },
    });
    const result = resultOf({
      actuals: [
        foreign(actual({ of: 'blanks', quantity: 41, amountMinor: 20_295 })),
        actual({ of: 'freight', amountMinor: 1_150 }),
        foreign(actual({ of: 'freight', amountMinor: 99 })),
        foreign(actual({ of: 'ink', mL: 44 })),
      ],
    });
    expect(result.actuals.blanks).toMatchObject({
      quantity: 41,
      quantityFrom: 'typed',
      eachFrom: 'standard',
    });
    expect(result.actuals.ink.quantity).toBe(44);
    expect(bar(result, 'freight')?.minor).toBe(-200);
    expect(actualTroubles(result, [])).toEqual([{ what: 'otherCurrency', noted: 'EUR', run: 'USD' }]);
  });

  it('takes the price of a delivery where nobody typed what the blanks cost', () => {
    const result = runResult(
      { body: clubStandard() },
      {
        facts: { ...noFacts, actuals: [actual({ of: 'blanks', quantity: 41, amountMinor: null })] },
        paid: { blank: (_, size) => (size === '2XL' || size === '3XL' ? null : 5), sheet: () => null },
        orderHours: [],
      },
    );
    // 32 of 37 at 5.00 for 4.60: 0.40 · 32 ÷ 37 dearer, on 41.
    expect(bar(result, 'blanksPrice')?.amount).toBeCloseTo(-0.4 * (32 / 37) * 41, 8);
    expect(result.actuals.blanks.eachFrom).toBe('goodsIn');
  });

  it('has no price bar where sizes were paid at their planned prices, whichever came out', () => {
    const prices: Readonly<Record<string, number>> = { '2XL': 6.1, '3XL': 7.1 };
    const small = clubPressings().filter(({ body }) => ['S', 'M', 'L'].includes(body.size));
    const asked = (paidFor: (size: string) => number) =>
      runResult(
        { body: clubStandard() },
        {
          facts: { ...noFacts, pressings: small },
          paid: { blank: (_, size) => paidFor(size), sheet: () => 0.14 },
          orderHours: [],
        },
      );
    const found = asked((size) => prices[size] ?? 4.6);
    // 24 good of 28 drawn, all at 4.60.
    expect(found.actuals.blanks).toMatchObject({ quantity: 28, eachFrom: 'goodsIn' });
    expect(found.actuals.blanks.each).toBeCloseTo(4.6, 9);
    expect(bar(found, 'blanksPrice')?.minor).toBe(0);
    expect(bar(found, 'paperPrice')?.minor).toBe(0);
    // 10 cents more on each of 28.
    expect(
      bar(
        asked((size) => (prices[size] ?? 4.6) + 0.1),
        'blanksPrice',
      )?.minor,
    ).toBe(-280);
    // Nothing came good: 37 and their spares were laid out, all 10 cents dearer.
    const scrap = small.map((one) => ({ ...one, body: { ...one.body, result: 'scrap' as const } }));
    const none = runResult(
      { body: clubStandard() },
      {
        facts: { ...noFacts, pressings: scrap.filter(({ body }) => body.placementId === 'back') },
        paid: { blank: (_, size) => (prices[size] ?? 4.6) + 0.1, sheet: () => null },
        orderHours: [],
      },
    );
    expect(bar(none, 'blanksPrice')?.minor).toBe(-280);
  });

  it('takes the price of a metre for as much of a roll as counts for one sheet', () => {
    const standard = clubStandard();
    const works = standard.works.map((work) => ({ ...work, sheets: { ...work.sheets, metresEach: 0.1 } }));
    const paidFor = { blank: () => null, sheet: () => 1.5 };
    const asked = {
      facts: { ...noFacts, actuals: [actual({ of: 'sheets', quantity: 58, amountMinor: null })] },
      ...{ paid: paidFor, orderHours: [] },
    };
    // 1.50 a metre is 0.15 a sheet, for 0.14: a cent on each of 58.
    expect(bar(runResult({ body: { ...standard, works } }, asked), 'paperPrice')?.amount).toBeCloseTo(
      -0.58,
      9,
    );
  });

  it('takes an element by the clock and leaves the others to the standard', () => {
    const result = resultOf({ hours: [hour(200, 'presses'), hour(7.9844, 'presses')] });
    // 207.9844 for 177.9844 minutes: half an hour at 18.
    expect(bar(result, 'labour')?.amount).toBeCloseTo(-9, 6);
  });

  it('takes the newest figure of a kind', () => {
    const result = resultOf({ actuals: [actual({ of: 'ink', mL: 90 }), actual({ of: 'ink', mL: 44 })] });
    expect(bar(result, 'inkUsage')?.amount).toBeCloseTo((35.102 - 44) * 0.16, 8);
  });
});

describe('fewer good pieces than wanted', () => {
  it('are held against the standard for those that came', () => {
    // One S is lost at the badge, and nothing replaces it: 36 good, and its 19.00 are not asked.
    const pressings = clubPressings()
      .slice(0, -2)
      .map((entry, at, all) =>
        at === all.length - 1 ? { ...entry, body: { ...entry.body, result: 'scrap' as const } } : entry,
      );
    const result = resultOf({ pressings });
    expect(result.budget.pieces).toBe(36);
    expect(result.budget.blanks.quantity).toBeCloseTo(36 / (0.965 * 0.98 * 0.99), 8);
    expect(result.budget.revenue).toBeCloseTo(711.5 - 21.5, 8);
  });
});

describe('a good piece beyond the order', () => {
  // The badge that was reversed came good: 12 of size L, where 11 were ordered.
  const pressings = clubPressings().map((entry, at, all) =>
    at === all.length - 1
      ? { ...entry, body: { ...entry.body, result: 'good' as const, fault: null } }
      : entry,
  );
  const result = resultOf({ pressings });

  it('brings no price in, and lies in stock at what of it was bought: its hours are not paid yet', () => {
    expect(result.budget.pieces).toBe(38);
    expect(result.budget.revenue).toBeCloseTo(711.5, 8);
    expect(result.came?.revenue).toBeCloseTo(711.5, 8);
    expect(result.budget.fees).toBeCloseTo(11.338923, 8);
    // Held for the 37 that somebody paid for.
    expect(result.budget.reprints).toBeCloseTo(6.217454, 8);
    // Blank 4.9133, sheets 0.1926, ink 0.1291, tape and paper 0.1351, power 0.0080, bag 0.15: 5.5280.
    expect(result.spares).toEqual({ pieces: 1, seconds: 0, cost: 5.53 });
    // One more takes 0.0810 of wear and 7.2563 min at 22.20 an hour beside.
    expect(bar(result, 'output')?.amount).toBeCloseTo(5.53 - 5.52797 - 0.080962 - 2.684819, 5);
  });

  it('of second grade lies in stock at no more than a first, and nothing above what was bought', () => {
    const second = clubPressings().map((entry, at, all) =>
      at === all.length - 1
        ? { ...entry, body: { ...entry.body, result: 'second' as const, fault: null } }
        : entry,
    );
    const seconds = resultOf({ pressings: second });
    expect(seconds.spares).toEqual({ pieces: 0, seconds: 1, cost: 5.53 });
    expect(bar(seconds, 'output')?.amount).toBeCloseTo(5.53, 9);
  });

  it('is held against the standard of 38 as any other: 41 blanks for 40.59', () => {
    expect(result.budget.blanks.quantity).toBeCloseTo(38 / (0.965 * 0.98 * 0.99), 8);
    expect(bar(result, 'blanksUsage')?.to).toBe(41);
  });

  it('that nobody ordered is sold as the others, for a stall sells what it has', () => {
    const works = clubStandard().works.map((work) => ({ ...work, orderId: null }));
    const free = runResult(
      { body: { ...clubStandard(), works } },
      { facts: { ...noFacts, pressings }, paid, orderHours: [] },
    );
    expect(free.budget.revenue).toBeCloseTo(730.5, 8);
    expect(free.spares).toEqual({ pieces: 0, seconds: 0, cost: 0 });
  });

  it('makes up for no other size: its own price is missing', () => {
    // A badge of size S was spoiled beside.
    const one = pressings.findIndex(({ body }) => body.placementId === 'badge' && body.size === 'S');
    const short = pressings.map((entry, at) =>
      at === one ? { ...entry, body: { ...entry.body, result: 'scrap' as const } } : entry,
    );
    expect(resultOf({ pressings: short }).budget.revenue).toBeCloseTo(692.5, 8);
  });
});

describe('a cause', () => {
  it('is the newest word on its line', () => {
    const word = (cause: 'interruption' | 'artLate') =>
      noteOf('runStep', {
        ...{ runId: 'run', standardId: null, day: '2026-12-12' },
        step: { what: 'cause' as const, line: 'labour' as const, cause, note: '' },
      });
    const result = resultOf({ steps: [word('interruption'), word('artLate')] });
    expect(bar(result, 'labour')?.cause?.cause).toBe('artLate');
    expect(bar(result, 'overhead')?.cause).toBeNull();
  });
});
