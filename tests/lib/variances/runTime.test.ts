import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { runResult } from '@/lib/variances/runResult';
import { runTime } from '@/lib/variances/runTime';
import { sharedHours } from '@/lib/variances/sharedHours';
import { yearSpan } from '@/lib/year/yearSpan';
import { yearStanding } from '@/lib/year/yearStanding';
import type { Entry } from '@/shared/schemas/happened';
import type { Hours, WorkElement } from '@/shared/schemas/making/runEvents';
import { clubPressings, clubStandard, hour, noFacts } from '@/tests/fixtures/clubStandard';
import { aYear, entry, standardOf, worked } from '@/tests/lib/year/aYear';
import { cases } from '@/tests/tools/cases';

const order = { kind: 'order', id: 'order-1' } as const;
const forOrder = (minutes: number, element: WorkElement) => worked('a-1', minutes, { for: order, element });
/** 100 minutes of pressing and 40 of enquiry, for the same order. */
const second = standardOf('second', {
  labour: {
    ...{ minutes: 140, wagePerHour: 18 },
    elements: [
      { element: 'presses', minutes: 100 },
      { element: 'enquiry', minutes: 40 },
    ],
  },
});
/** 300 minutes of pressing and 40 of enquiry, beside 100 and 40. */
const both = [standardOf('first'), second];
const partsOf = (hours: readonly { readonly body: Hours }[], standards = both) =>
  ['first', 'second'].map((runId) =>
    (sharedHours(hours, standards).get(runId) ?? []).reduce((sum, { minutes }) => sum + minutes, 0),
  );

describe('time noted for an order of two runs', () => {
  it('is shared by what the standards have for that work: 60 at the press as 45 and 15', () => {
    expect(partsOf([forOrder(60, 'presses')])).toEqual([45, 15]);
    expect(partsOf([forOrder(30, 'enquiry')])).toEqual([15, 15]);
  });

  it('that no standard has goes by all their minutes for the order: 96 as 68 and 28', () => {
    expect(partsOf([forOrder(96, 'art')])).toEqual([68, 28]);
  });

  it('goes to no run whose standard was withdrawn, and to the newest of two', () => {
    expect(partsOf([forOrder(60, 'presses')], [both[0] ?? second, { ...second, withdrawn: true }])).toEqual([
      60, 0,
    ]);
    const again = { ...second, id: 'newer', body: { ...second.body, works: [] } };
    expect(partsOf([forOrder(60, 'presses')], [...both, again])).toEqual([60, 0]);
  });

  it('falls to none where no run is made for it', () => {
    expect(partsOf([worked('a-1', 60, { for: { kind: 'order', id: 'other' } })])).toEqual([0, 0]);
  });

  it('counts in its runs once in all, whatever was noted', () => {
    const elements: readonly WorkElement[] = ['presses', 'enquiry', 'art', 'rest', 'deliver'];
    const notes = fc.array(
      fc.tuple(
        fc.integer({ min: 0, max: 1_440 }),
        fc.constantFrom(...elements),
        fc.constantFrom<Hours['for']>(order, { kind: 'run', id: 'first' }, { kind: 'run', id: 'second' }),
      ),
      { maxLength: 8 },
    );
    fc.assert(
      fc.property(notes, (drawn) => {
        const hours = drawn.map(([minutes, element, about], at) =>
          worked(`a-${at + 1}`, minutes, { for: about, element }),
        );
        const shared = sharedHours(hours, both);
        const counted = both.map(({ body }) => {
          const own = hours.flatMap((one) =>
            one.body.for.kind === 'run' && one.body.for.id === body.runId ? [one.body] : [],
          );
          const time = runTime({
            ...{ standard: body, pressings: [], hours: own, shared: shared.get(body.runId) ?? [] },
          });
          return time.minutes - time.plannedMinutes;
        });
        const noted = hours.reduce((sum, { body }) => sum + body.minutes, 0);
        expect(counted.reduce((sum, minutes) => sum + minutes, 0)).toBeCloseTo(noted, 6);
      }),
      cases(300),
    );
  });
});

describe('time noted for a stall day', () => {
  it('is of its runs where it was at the bench, and else of the day', () => {
    const fair = { kind: 'stallDay', id: 'spring-fair' } as const;
    const forFair = [standardOf('first', { orderId: null, stallDayId: 'spring-fair' })];
    const hours = [
      worked('a-1', 250, { for: fair, element: 'presses' }),
      worked('a-2', 420, { for: fair, element: 'selling' }),
    ];
    expect(partsOf(hours, forFair)).toEqual([250, 0]);
  });
});

describe('the time of a run of two orders', () => {
  const [one] = both[0]?.body.works ?? [];
  const other = second.body.works.map((work) => ({ ...work, jobId: 'job-2', orderId: 'order-2' }));
  const standard = { ...second.body, runId: 'first', works: one === undefined ? [] : [one, ...other] };
  const timeOf = (hours: readonly Hours[], shared: Parameters<typeof runTime>[0]['shared']) =>
    runTime({ standard, pressings: [], hours, shared });

  it('has the enquiry that one order noted, and that of the other as planned', () => {
    const time = timeOf([], [{ of: order, element: 'enquiry', minutes: 25 }]);
    // 300 + 100 at the press, 25 noted, 40 as planned.
    expect(time.minutes).toBe(465);
    expect(time.plannedMinutes).toBe(440);
    expect(time.elements).toContainEqual({ element: 'enquiry', standard: 80, actual: 65 });
    expect(time.elements).toContainEqual({ element: 'presses', standard: 400, actual: null });
  });

  it('is all there is where the rest was noted in one, for the run or for one of its orders', () => {
    expect(timeOf([hour(360, 'rest').body], []).minutes).toBe(360);
    // 140 of the other order are as planned.
    expect(timeOf([], [{ of: order, element: 'rest', minutes: 360 }]).minutes).toBe(500);
  });
});

describe('the hours of a closed run', () => {
  const standard = clubStandard();
  const runSteps = [
    entry('runStep', 'a-9', {
      ...{ runId: 'run', standardId: 'standard', day: '2026-12-12' },
      step: { what: 'closed', note: '' },
    }),
  ];
  const standards = [{ id: 'standard', withdrawn: false, body: standard }];
  const hoursOf = (hours: readonly Entry<'hours', Hours>[], pressings: ReturnType<typeof clubPressings>) => {
    const shared = sharedHours(hours, standards).get('run') ?? [];
    const own = hours.filter(({ body }) => body.for.kind === 'run');
    const facts = { ...noFacts, hours: own, pressings };
    const paid = { blank: () => null, sheet: () => null };
    const { actuals } = runResult({ body: standard }, { facts, paid, orderHours: shared });
    const noted = aYear({ standards, runSteps, hours, pressings });
    const year = yearStanding(noted, yearSpan(2026, 1), '2026-12-31').hoursWorked;
    return [actuals.labour.quantity, year] as const;
  };
  const enquiry = {
    ...hour(55, 'enquiry'),
    body: { ...hour(55, 'enquiry').body, for: { ...order, id: 'order' } },
  };

  it('are the same in its bridge and in the year: one element by the clock, one of the order, the others as planned', () => {
    // 452.2819 with 200 for 177.9844 at the press and 55 for 40 of enquiry.
    const [bridge, year] = hoursOf([hour(200, 'presses'), enquiry], clubPressings());
    expect(bridge).toBeCloseTo((452.2819 + 22.0156 + 15) / 60, 8);
    expect(year).toBeCloseTo(bridge, 10);
  });

  it('are as planned for the pieces that came, in both: a shirt less is 1.20 min less to fold', () => {
    const fewer = clubPressings().filter(
      ({ body }, at, all) =>
        body.placementId !== 'badge' || at !== all.findLastIndex((one) => one.body.result === 'good'),
    );
    const [bridge, year] = hoursOf([], fewer);
    // And 7.2563 in all with its sheet and presses, as one more takes.
    expect(bridge).toBeCloseTo((452.2819 - 7.256266) / 60, 5);
    expect(year).toBeCloseTo(bridge, 10);
    const [clocked, inYear] = hoursOf([hour(504, 'rest')], fewer);
    expect([clocked, inYear]).toEqual([8.4, 8.4]);
  });
});
