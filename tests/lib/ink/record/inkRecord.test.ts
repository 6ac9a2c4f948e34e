import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { fitInkRecord } from '@/lib/ink/record/fitInkRecord';
import { type InkInterval, inkIntervals } from '@/lib/ink/record/inkIntervals';
import { studentT95 } from '@/lib/ink/record/studentT';
import { cases } from '@/tests/tools/cases';

const told = { loss: 0.1, sessionMl: 4 };
const interval = (inkAreaIn2: number, sessions: number, refillMl: number, prints = 100): InkInterval => ({
  inkAreaIn2,
  sessions,
  refillMl,
  prints,
});
/** What a printer of known figures would have been refilled with. */
const trueRefill = (area: number, sessions: number) => area * 0.0065 * 1.1 + sessions * 4;

describe('fitInkRecord', () => {
  it('finds laydown and session loss of a printer that follows them, by hand', () => {
    // 8000 in² at 0.0065 × 1.1 are 57.2 mL; 4000 are 28.6; 2000 are 14.3. Sessions take 4 mL each.
    const record = [interval(8000, 2, 65.2), interval(4000, 6, 52.6), interval(2000, 1, 18.3)];
    const fit = fitInkRecord(record, { ...told, sessionMl: 1 });
    if (fit.kind !== 'fitted') throw new Error(fit.kind);
    expect(fit.of).toBe('both');
    expect(fit.laydownMlPerIn2.value).toBeCloseTo(0.0065, 10);
    expect(fit.sessionMl.value).toBeCloseTo(4, 8);
    expect(fit.cleaningShare).toBeCloseTo(36 / 136.1, 8);
    expect(fit.prints).toBe(300);
    expect(fit.isEnough).toBe(true);
    expect((fit.laydownMlPerIn2.range?.to ?? 1) - (fit.laydownMlPerIn2.range?.from ?? 0)).toBeLessThan(1e-8);
  });

  it('takes the told session loss out where one refill tells nothing apart', () => {
    // (65.2 − 2 × 4) / (1.1 × 8000) = 0.0065.
    const fit = fitInkRecord([interval(8000, 2, 65.2)], told);
    expect(fit).toMatchObject({
      kind: 'fitted',
      of: 'laydown',
      sessionMl: { value: 4, range: null },
      isEnough: false,
    });
    if (fit.kind === 'fitted') expect(fit.laydownMlPerIn2.value).toBeCloseTo(0.0065, 12);
  });

  it('keeps the told session loss while sessions keep step with printing', () => {
    const record = [1, 2, 3].map((times) => interval(4000 * times, times, trueRefill(4000, 1) * times));
    const fit = fitInkRecord(record, told);
    expect(fit).toMatchObject({ kind: 'fitted', of: 'laydown', sessionMl: { value: 4 } });
  });

  it('is as unsure as the refills scatter', () => {
    // Two refills of one size, 1 mL either side of 40: mean 36 / 1.1 / 5000 after 4 mL of cleaning.
    const fit = fitInkRecord([interval(5000, 1, 39), interval(5000, 1, 41)], told);
    if (fit.kind !== 'fitted' || fit.laydownMlPerIn2.range === null) throw new Error('a range');
    const { value, range } = fit.laydownMlPerIn2;
    expect(value).toBeCloseTo(36 / 1.1 / 5000, 12);
    // Scatter 2 mL² over 1 degree of freedom, √(2 × 2) / 10,000 in², times t 12.706.
    expect(range.to - value).toBeCloseTo((12.706 * 2) / 10_000 / 1.1, 10);
    expect(range.from).toBeCloseTo(value - (12.706 * 2) / 10_000 / 1.1, 10);
  });

  test.each<[string, readonly InkInterval[]]>([
    ['no refill', []],
    ['sessions alone', [interval(0, 3, 12, 0)]],
    ['cleaning that took more than all', [interval(100, 10, 20)]],
  ])('says there is too little: %s', (_, record) => {
    expect(fitInkRecord(record, told).kind).toBe('tooLittle');
  });

  it('does not believe in cleaning that gives ink back', () => {
    const record = [interval(8000, 8, 50), interval(4000, 1, 40), interval(3000, 4, 20)];
    const fit = fitInkRecord(record, told);
    if (fit.kind === 'fitted') expect(fit.sessionMl.value).toBeGreaterThanOrEqual(0);
    expect(fit).toMatchObject({ of: 'laydown' });
  });

  it('finds any printer again from what it used, and more ink never gives less laydown', () => {
    const records = fc.array(
      fc.record({ area: fc.integer({ min: 500, max: 20_000 }), sessions: fc.integer({ min: 0, max: 12 }) }),
      { minLength: 1, maxLength: 12 },
    );
    const printer = fc.record({
      laydown: fc.double({ min: 0.003, max: 0.015, noNaN: true }),
      session: fc.double({ min: 0.5, max: 10, noNaN: true }),
    });
    fc.assert(
      fc.property(records, printer, (record, { laydown, session }) => {
        const used = record.map(({ area, sessions }) =>
          interval(area, sessions, area * laydown * 1.1 + sessions * session),
        );
        const fit = fitInkRecord(used, { loss: 0.1, sessionMl: session });
        if (fit.kind !== 'fitted') throw new Error(fit.kind);
        expect(fit.laydownMlPerIn2.value).toBeCloseTo(laydown, 8);
        expect(fit.sessionMl.value).toBeCloseTo(session, 5);
        expect(fit.cleaningShare).toBeLessThanOrEqual(1);
      }),
      cases(300),
    );
  });
});

describe('inkIntervals', () => {
  const refills = [
    { day: '2026-03-20', mL: 30 },
    { day: '2026-03-01', mL: 99 },
    { day: '2026-03-10', mL: 20 },
    { day: '2026-03-10', mL: 5 },
  ];
  const run = (day: string, prints: number) => ({ day, prints, total: 0.5, areaIn2: 80 });

  it('gives each refill what was printed since the one before', () => {
    const runs = [
      run('2026-02-28', 7),
      run('2026-03-02', 10),
      run('2026-03-10', 1),
      run('2026-03-20', 3),
      run('2026-03-25', 9),
    ];
    const sessions = [
      { day: '2026-03-01', sessions: 5 },
      { day: '2026-03-04', sessions: 2 },
      { day: '2026-03-15', sessions: 1 },
    ];
    expect(inkIntervals(refills, runs, sessions)).toEqual([
      { refillMl: 25, inkAreaIn2: 440, prints: 11, sessions: 2 },
      { refillMl: 30, inkAreaIn2: 120, prints: 3, sessions: 1 },
    ]);
  });

  it('gives the prints of a refill’s day to the next refill where the tank was filled before them', () => {
    const filled = (day: string, mL: number) => ({ day, mL, beforePrints: true }) as const;
    const runs = [run('2026-03-01', 4), run('2026-03-10', 6)];
    const sessions = [{ day: '2026-03-10', sessions: 2 }];
    // 4 × 0.5 × 80 in² and 6 × 0.5 × 80 in².
    expect(
      inkIntervals(
        [filled('2026-03-01', 99), filled('2026-03-10', 20), { day: '2026-03-20', mL: 30 }],
        runs,
        sessions,
      ),
    ).toEqual([
      { refillMl: 20, inkAreaIn2: 160, prints: 4, sessions: 0 },
      { refillMl: 30, inkAreaIn2: 240, prints: 6, sessions: 2 },
    ]);
    // Filled up in the morning and again in the evening: the day's prints lie before the full tank of the evening.
    expect(
      inkIntervals(
        [filled('2026-03-01', 99), filled('2026-03-10', 20), { day: '2026-03-10', mL: 5 }],
        runs,
        sessions,
      ),
    ).toEqual([{ refillMl: 25, inkAreaIn2: 400, prints: 10, sessions: 2 }]);
  });

  it('gives nothing for a first refill alone', () => {
    expect(inkIntervals(refills.slice(1, 2), [run('2026-03-02', 1)], [])).toEqual([]);
  });
});

// NIST/SEMATECH e-Handbook of Statistical Methods, table 1.3.6.7.2, column 0.975.
test.each([
  [1, 12.706],
  [10, 2.228],
  [30, 2.042],
  [40, 2.021],
  [60, 2.0],
  [100, 1.984],
])('studentT95 with %d degrees of freedom is %d', (freedom, point) => {
  expect(studentT95(freedom)).toBeCloseTo(point, 3);
});
