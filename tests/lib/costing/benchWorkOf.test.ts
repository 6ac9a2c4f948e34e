import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { benchMinutes } from '@/lib/calendar/ifAllCome';
import { benchWorkOf, stagesOf } from '@/lib/costing/benchWorkOf';
import { wholeJob } from '@/lib/grid/costSheet';
import { clubWork } from '@/tests/fixtures/benchWork';
import { club, clubWith, mugs, TODAY } from '@/tests/fixtures/clubJob';
import { costed } from '@/tests/fixtures/costed';
import { cases } from '@/tests/tools/cases';

const tenth = (minutes: number) => Math.round(minutes * 10) / 10;

describe('what a job asks of the bench', () => {
  it('is the worked run minute by minute', () => {
    const work = benchWorkOf(costed(club()));
    const rounded = {
      before: work.before.map((one) => ({ ...one, minutes: tenth(one.minutes) })),
      press: work.press && {
        ...work.press,
        runs: work.press.runs.map(({ minutes }) => tenth(minutes)),
      },
      after: work.after.map((one) => ({ ...one, minutes: tenth(one.minutes) })),
    };
    expect(rounded).toEqual({ ...clubWork, press: { ...clubWork.press, runs: [98.7, 79.3] } });
  });

  it('counts the minutes a press works alone, for they pass on the clock', () => {
    // Fair mugs: each press holds for as long as it works alone; nobody is paid for that.
    const job = costed(mugs());
    const { press } = benchWorkOf(job);
    const hands = wholeJob(job.sheet, 'pressTime');
    const alone = job.laidOut.job.lines[0]?.placements[0]?.aloneMinutes.value ?? 0;
    expect(alone).toBeGreaterThan(0);
    expect(press?.runs.reduce((sum, { minutes }) => sum + minutes, 0)).toBeCloseTo(
      hands + alone * wholeJob(job.sheet, 'presses'),
      6,
    );
  });

  it('has no breaks of its own where rest is in the minutes', () => {
    const rest = { value: 0.15, unit: 'share', date: TODAY, origin: 'yours' };
    expect(benchWorkOf(costed(clubWith({ 'workshop.rates.restAllowance': rest }))).press?.breakMinutes).toBe(
      0,
    );
  });

  it('comes to the paid minutes that the job is priced for, with any rest and any number of sessions', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        fc.integer({ min: 1, max: 40 }),
        (rest, most) => {
          const job = costed(
            clubWith({
              'workshop.rates.restAllowance': { value: rest, unit: 'share', date: TODAY, origin: 'yours' },
              'job.piecesPerSession': most,
            }),
          );
          expect(benchMinutes(benchWorkOf(job))).toBeCloseTo(wholeJob(job.sheet, 'benchTime'), 6);
          expect(benchWorkOf(job).press?.sessions).toBe(Math.ceil(37 / most));
        },
      ),
      cases(20),
    );
  });

  it('waits for a printer that takes longer than all hands', () => {
    const slow = costed(
      clubWith({
        'workshop.printers.0.unattendedMinutesPerSheet': {
          value: 10,
          unit: 'min',
          date: TODAY,
          origin: 'yours',
        },
      }),
    );
    // 52.9 sheets at 10 min are 529 min, the hands need 352.3: 176.7 more than the 52.9 of feeding.
    expect(tenth(stagesOf(slow).printer)).toBe(529);
    expect(tenth(benchWorkOf(slow).before[0]?.minutes ?? 0)).toBe(229.6);
  });
});
