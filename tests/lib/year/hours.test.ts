import { describe, expect, it } from 'vitest';
import { exampleWorkshop } from '@/lib/examples/exampleWorkshop';
import { longDays } from '@/lib/year/hourRows';
import { machineWear, type WearNoted } from '@/lib/year/machineWear';
import { yearSpan } from '@/lib/year/yearSpan';
import { type YearNoted, yearStanding } from '@/lib/year/yearStanding';
import { runSchema } from '@/shared/schemas/making/run';
import type { Rate } from '@/shared/schemas/rate';
import type { RateUnit } from '@/shared/tables/rateCatalogue';
import { TEST_DAY } from '@/tests/tools/clock/testDay';
import { aYear, closed, entry, fairPlans, spent, standardOf, worked } from './aYear';

const span = yearSpan(2026, 1);
const yearOf = (noted: Partial<YearNoted>) => yearStanding(aYear(noted), span, '2026-12-31');
const fair = { kind: 'stallDay', id: 'spring-fair' } as const;
const step = (id: string, what: 'closed' | 'reopened') =>
  entry('runStep', id, {
    ...{ runId: 'club', standardId: 'standard-club', day: '2026-06-03' },
    step: what === 'closed' ? { what, note: '' } : { what },
  });

const rate = <Unit extends RateUnit>(value: number, unit: Unit): Rate<Unit> => ({
  ...{ value, unit, date: TEST_DAY, origin: 'yours' },
});

describe('hours', () => {
  it('of a stall day are those of its close and its plan’s at the bench', () => {
    const { hours, hoursWorked } = yearOf({ closes: [closed('c')] });
    expect(hours.map(({ from, minutes }) => [from, minutes])).toEqual([
      ['close', 660],
      ['closePlan', 720],
    ]);
    expect(hoursWorked).toBe(23);
  });

  it('noted for the day beside its close count once: selling is in the close, pressing takes the plan’s place', () => {
    const selling = worked('a-1', 420, { for: fair, element: 'selling' });
    const pressing = worked('a-2', 600, { for: fair, element: 'presses' });
    expect(yearOf({ closes: [closed('c')], hours: [selling] }).hoursWorked).toBe(23);
    expect(yearOf({ closes: [closed('c')], hours: [selling, pressing] }).hoursWorked).toBe(21);
    // Not closed yet, they are all there is.
    expect(yearOf({ hours: [selling, pressing] }).hoursWorked).toBe(17);
  });

  it('at the bench for a day that a run was made for are those of the run', () => {
    const run = runSchema.parse({ name: 'Fair', works: [{ jobId: 'job-1', stallDayId: 'spring-fair' }] });
    const noted = worked('a-1', 540, { for: { kind: 'run', id: 'fair-run' }, element: 'presses' });
    const year = yearOf({ closes: [closed('c')], runs: { 'fair-run': run }, hours: [noted] });
    expect(year.hoursWorked).toBe(20);
    // One that is only planned says no time, so the plan of the day stands.
    expect(yearOf({ closes: [closed('c')], runs: { 'fair-run': run } }).hoursWorked).toBe(23);
  });

  it('of a closed run are its standard’s where nobody noted any, less what its order or somebody says of an element', () => {
    const standards = [standardOf('club')];
    const runSteps = [step('a-1', 'closed')];
    // 300 and 40 minutes.
    expect(yearOf({ standards, runSteps }).hoursWorked).toBeCloseTo(340 / 60, 10);
    const enquiry = worked('a-2', 25, { for: { kind: 'order', id: 'order-1' }, element: 'enquiry' });
    expect(yearOf({ standards, runSteps, hours: [enquiry] }).hoursWorked).toBeCloseTo(325 / 60, 10);
    const pressed = worked('a-3', 360, { for: { kind: 'run', id: 'club' }, element: 'presses' });
    // Six hours at the press; the enquiry nobody noted.
    expect(yearOf({ standards, runSteps, hours: [pressed] }).hoursWorked).toBeCloseTo(400 / 60, 10);
    const all = worked('a-4', 360, { for: { kind: 'run', id: 'club' }, element: 'rest' });
    expect(yearOf({ standards, runSteps, hours: [all] }).hoursWorked).toBe(6);
  });

  it('of a run that is not closed, or was opened again, are none that nobody noted', () => {
    const standards = [standardOf('club')];
    expect(yearOf({ standards }).hoursWorked).toBe(0);
    expect(
      yearOf({ standards, runSteps: [step('a-1', 'closed'), step('a-2', 'reopened')] }).hoursWorked,
    ).toBe(0);
  });

  it('of more than a whole night are told, and count', () => {
    const long = [worked('a-1', 900), worked('b-1', 120), worked('a-2', 960, { day: '2026-06-21' })];
    const year = yearOf({ hours: long });
    expect(year.hoursWorked).toBe(33);
    expect(year.longDays).toEqual([{ day: '2026-06-20', minutes: 1020 }]);
    expect(longDays([])).toEqual([]);
  });
});

describe('overhead', () => {
  it('is carried at the rate each hour was reckoned with, and held against what was paid', () => {
    const { overhead } = yearOf({
      closes: [closed('c')],
      plans: fairPlans,
      standards: [standardOf('club', { overheadPerHour: 5 })],
      hours: [
        worked('a-1', 120, { for: { kind: 'run', id: 'club' } }),
        worked('a-2', 60, { for: { kind: 'order', id: 'order-1' } }),
        worked('a-3', 600),
      ],
      expenses: [
        spent('a-4', 9000),
        spent('a-5', 2000, { kind: 'power' }),
        spent('a-6', 7000, { kind: 'ink' }),
      ],
      overheadPerHour: 3,
    });
    // (11 + 12) × 4.20 + 2 × 5.00 + 1 × 3.00; hours for the workshop carry nothing.
    expect(overhead).toEqual({ absorbedMinor: 10960, hours: 26, actualMinor: 11000 });
  });

  it('pays for wear where the workshop says so', () => {
    const { printers } = exampleWorkshop(TEST_DAY);
    const worn = printers.slice(0, 1).map((printer) => ({
      ...{ ...printer, price: rate(500, 'money'), resale: null },
      ...{ lifeSheets: null, lifeYears: rate(5, 'years') },
    }));
    const expenses = [spent('a-1', 9000)];
    // 500 over five years.
    expect(yearOf({ printers: worn, expenses, wearInOverhead: true }).overhead.actualMinor).toBe(19000);
    expect(yearOf({ printers: worn, expenses }).overhead.actualMinor).toBe(9000);
  });

  it('that work carries is not known where no rate is', () => {
    const hours = [worked('a-1', 60, { for: { kind: 'order', id: 'order-1' } })];
    expect(yearOf({ hours }).overhead.absorbedMinor).toBeNull();
  });
});

describe('wear', () => {
  const { presses, printers } = exampleWorkshop(TEST_DAY);
  const [press, printer] = [presses[0], printers[0]];
  if (press === undefined || printer === undefined) throw new Error('a press and a printer');
  const pressed = (count: number) =>
    Array.from({ length: count }, (_, at) =>
      entry('pressing', `a-${at + 1}`, {
        ...{
          runId: 'club',
          standardId: null,
          jobId: 'job-1',
          lineId: 'line-1',
          placementId: 'front',
          size: 'L',
        },
        ...{ result: 'good', fault: null },
      }),
    );
  const job = { printerId: 'p', lines: [{ placements: [{ id: 'front', pressId: 'flat' }] }] };
  const noted = (change: Partial<WearNoted> = {}) =>
    aYear({
      presses: [
        {
          ...{
            ...press,
            id: 'flat',
            name: 'Flat press',
            price: rate(900, 'money'),
            resale: rate(100, 'money'),
          },
          ...{ lifePresses: rate(40_000, 'presses'), lifeYears: rate(8, 'years') },
        },
      ],
      jobOf: () => job as unknown as ReturnType<WearNoted['jobOf']>,
      pressings: pressed(100),
      ...change,
    });

  it('is by use where that takes more, else by age as far as the year has come', () => {
    // 100 presses: 800 × 100 ÷ 40,000 = 2.00; 800 ÷ 8 years = 100.00, of half a year 50.00.
    expect(machineWear(noted(), span, 1).machines).toEqual([
      { id: 'flat', name: 'Flat press', uses: 100, counted: 'presses', wear: 100, by: 'age' },
    ]);
    expect(machineWear(noted(), span, 0.5).machines[0]).toMatchObject({ wear: 50, by: 'age' });
    expect(machineWear(noted(), span, 0).machines[0]).toMatchObject({ wear: 2, by: 'use' });
    // 14 March ends the 73rd of 365 days, a fifth.
    const year = yearStanding(noted(), span, '2026-03-14');
    expect(year.wearMinor).toBe(2000);
  });

  it('is of sheets at a printer, rejected ones too, and of the standard’s press before the job’s', () => {
    const sheets = entry('sheetsPrinted', 'a-1', {
      ...{
        runId: 'club',
        standardId: null,
        jobId: 'job-1',
        placementId: null,
        good: 90,
        rejected: 10,
        fault: null,
      },
    });
    const wear = machineWear(
      noted({
        ...{ presses: [], pressings: [], sheetsPrinted: [sheets] },
        printers: [
          {
            ...{ ...printer, id: 'p', name: 'Printer', price: rate(500, 'money'), resale: null },
            ...{ lifeSheets: rate(10_000, 'sheets'), lifeYears: null },
          },
        ],
      }),
      span,
      1,
    );
    expect(wear.machines[0]).toMatchObject({ uses: 100, wear: 5, by: 'use' });
  });

  it('is not known without a price, and presses of a machine that is gone are told', () => {
    const [kept] = noted().presses;
    if (kept === undefined) throw new Error('a press');
    expect(machineWear(noted({ presses: [{ ...kept, price: null }] }), span, 1).machines[0]?.wear).toBeNull();
    // With nothing noted of its use only its years tell.
    const ageless = noted({ presses: [{ ...kept, lifeYears: null }], pressings: [] });
    expect(machineWear(ageless, span, 1).machines[0]).toMatchObject({ wear: null, by: null });
    expect(machineWear(noted({ presses: [] }), span, 1).unplaced).toEqual({ presses: 100, sheets: 0 });
    expect(machineWear(noted({ dayOf: () => '2025-12-31' }), span, 1).machines[0]?.uses).toBe(0);
  });
});
