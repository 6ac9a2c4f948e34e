import { describe, expect, it } from 'vitest';
import type { InkRecord } from '@/lib/ink/record/inkRecordOf';
import { readInkRecord } from '@/lib/ink/record/readInkRecord';

const told = { loss: 0.1, sessionMl: 4 };
const refill = (day: string, mL: number) => ({ id: `r-${day}`, day, mL });
/** Prints of 10 × 10 in at 100 %: 100 in² of one channel each. */
const run = (day: string, prints: number, sessions: number) => ({
  id: `p-${day}-${prints}`,
  day,
  name: 'Prints',
  prints,
  total: 1,
  widthMm: 254,
  heightMm: 254,
  sessions,
  jobId: null,
});

/** A printer of 0.0065 mL/in², 10 % loss and 4 mL a session: 80 prints take 57.2, 40 take 28.6, 20 take 14.3. */
const exact: InkRecord = {
  refills: [
    refill('2026-01-01', 30),
    refill('2026-02-01', 57.2 + 2 * 4),
    refill('2026-03-01', 28.6 + 6 * 4),
    refill('2026-04-01', 14.3 + 4),
  ],
  runs: [run('2026-01-10', 80, 2), run('2026-02-10', 40, 6), run('2026-03-10', 20, 1)],
};

describe('a record of ink', () => {
  it('tells laydown, session loss and cleaning, and leaves nothing of its refills unexplained', () => {
    const { fit, refills, refilledMl, wants } = readInkRecord(exact, { ...told, sessionMl: 1 });
    if (fit.kind !== 'fitted') throw new Error(fit.kind);
    expect(fit.laydownMlPerIn2.value).toBeCloseTo(0.0065, 10);
    expect(fit.sessionMl.value).toBeCloseTo(4, 8);
    expect(refilledMl).toBeCloseTo(136.1, 9);
    expect(fit.cleaningShare).toBeCloseTo(36 / 136.1, 8);
    for (const { refillMl, explainedMl, isFarOff } of refills) {
      expect(explainedMl).toBeCloseTo(refillMl, 7);
      expect(isFarOff).toBe(false);
    }
    expect(wants).toEqual([{ kind: 'prints', has: 140, wants: 200 }]);
  });

  it('wants two refills, two hundred prints and three refills that differ', () => {
    expect(readInkRecord({ refills: [], runs: [] }, told)).toMatchObject({
      fit: { kind: 'tooLittle' },
      wants: [
        { kind: 'refills', has: 0, wants: 2 },
        { kind: 'prints', has: 0, wants: 200 },
        { kind: 'sessions', has: 0, wants: 3 },
      ],
    });
    const two = readInkRecord(
      {
        refills: [refill('2026-01-01', 30), refill('2026-02-01', 60)],
        runs: [run('2026-01-10', 250, 1)],
      },
      told,
    );
    expect(two.wants).toEqual([{ kind: 'sessions', has: 1, wants: 3 }]);
  });

  it('does not count prints before the first refill or after the last, and says how many', () => {
    const { uncounted } = readInkRecord(
      {
        refills: [refill('2026-01-01', 30), refill('2026-02-01', 60)],
        runs: [run('2025-12-24', 11, 1), run('2026-01-10', 80, 1), run('2026-02-02', 7, 1)],
      },
      told,
    );
    expect(uncounted).toEqual({ before: 11, after: 7 });
  });

  it('says of prints without any refill that they never will count, and of refills alone that prints are missing', () => {
    const prints = readInkRecord({ refills: [], runs: [run('2026-01-10', 80, 1)] }, told);
    expect(prints.fit.kind).toBe('tooLittle');
    expect(prints.uncounted).toEqual({ before: 80, after: 0 });
    const refills = readInkRecord(
      { refills: [refill('2026-01-01', 30), refill('2026-02-01', 60)], runs: [] },
      told,
    );
    expect(refills.fit.kind).toBe('tooLittle');
    expect(refills.wants).toEqual([
      { kind: 'prints', has: 0, wants: 200 },
      { kind: 'sessions', has: 0, wants: 3 },
    ]);
  });

  it('names a refill that its prints are far from explaining', () => {
    // Six refills of 61.2 mL by the rule of the printer, and one with a deep clean of 45 mL nobody noted.
    const months = ['02', '03', '04', '05', '06', '07'];
    const record: InkRecord = {
      refills: [
        refill('2026-01-01', 30),
        ...months.map((month) => refill(`2026-${month}-01`, 61.2 + (month === '05' ? 45 : 0))),
      ],
      runs: months.map((_, index) => run(`2026-0${index + 1}-15`, 80, 1)),
    };
    const far = readInkRecord(record, told).refills.filter(({ isFarOff }) => isFarOff);
    expect(far.map(({ day }) => day)).toEqual(['2026-05-01']);
    // The mean of all is 68.7: 37.5 mL are left.
    expect(far[0]?.refillMl).toBeCloseTo(106.2, 9);
    expect((far[0]?.refillMl ?? 0) - (far[0]?.explainedMl ?? 0)).toBeCloseTo(37.5, 9);
  });

  it('puts two refills of one day together', () => {
    const { refills } = readInkRecord(
      {
        refills: [
          refill('2026-01-01', 30),
          refill('2026-02-01', 20),
          { ...refill('2026-02-01', 25), id: 'x' },
        ],
        runs: [run('2026-01-10', 60, 1)],
      },
      told,
    );
    expect(refills.map(({ refillMl }) => refillMl)).toEqual([45]);
  });
});
