import { describe, expect, it } from 'vitest';
import type { BenchWork } from '@/lib/calendar/benchWork';
import { type Calendar, calendarOf } from '@/lib/calendar/calendar';
import { minutesBetween, minutesOfWeekdays } from '@/lib/calendar/freeMinutes';
import { ifAllCome } from '@/lib/calendar/ifAllCome';
import { behindLoad, latestOfAll, loadOf, type OrderLoad } from '@/lib/calendar/load';
import { latestDates } from '@/lib/calendar/orderDates';
import { paceOf, workLeft } from '@/lib/calendar/pace';
import { usualBlocks } from '@/lib/calendar/usualBlocks';
import { weeksAhead } from '@/lib/calendar/weeksAhead';
import type { DaysOff } from '@/shared/schemas/benchWeek';
import { clubWork, looseWork } from '@/tests/fixtures/benchWork';

function usual(...daysOff: readonly Omit<DaysOff, 'id' | 'what'>[]): Calendar {
  const found = calendarOf({
    blocks: [...usualBlocks],
    daysOff: daysOff.map((days, index) => ({ id: `off-${index}`, what: '', ...days })),
  });
  if (found === null) throw new Error('no blocks');
  return found;
}

const order = (
  id: string,
  wantedOn: string | null,
  work: BenchWork,
  blanks: OrderLoad['blanks'] = null,
): OrderLoad => ({ id, wantedOn, works: [work], blanks });

/** Wednesday 25 November 2026. */
const TODAY = '2026-11-25';

describe('free minutes between two days', () => {
  it.each([
    // Wed, Thu, Fri: 3 × 60.
    ['2026-11-25', '2026-11-27', 180],
    // And Saturday's 240, Sunday none.
    ['2026-11-25', '2026-11-29', 420],
    // A week: 5 × 60 + 240.
    ['2026-11-25', '2026-12-01', 540],
    ['2026-11-27', '2026-11-25', 0],
    // 416 weeks and 6 days from 5 January 2026, a Monday: 416 × 540 + 540.
    ['2026-01-05', '2033-12-31', 417 * 540],
  ])('%s to %s: %d', (from, to, minutes) => {
    expect(minutesBetween(usual(), from, to)).toBe(minutes);
  });

  it('leave out days off, once where two of them overlap, whichever end is written first', () => {
    const away = usual({ from: '2026-11-27', to: '2026-11-28' }, { from: '2026-11-30', to: '2026-11-28' });
    // Of Wed 25 to Tue 1 the 27th, 28th and 30th are gone: 540 − 60 − 240 − 60.
    expect(minutesBetween(away, '2026-11-25', '2026-12-01')).toBe(180);
  });

  it('are an hour on weekdays and four on Saturday in the usual week', () => {
    expect(minutesOfWeekdays(usual())).toEqual([60, 60, 60, 60, 60, 240, 0]);
  });
});

// By hand, as a planner with a wall calendar would count (common practice).
describe('the last days of an order wanted on Friday 11 December', () => {
  it('Thursday is the buffer, Saturday the 5th the press, blanks there on the 4th, four working days before', () => {
    const latest = latestDates(usual(), [clubWork], '2026-12-11', 4);
    expect(latest).toMatchObject({
      kind: 'latest',
      dates: {
        orderBlanksBy: '2026-11-30',
        approveBy: '2026-11-30',
        // 17 of the 52.9 min are free on Saturday morning, the rest on Friday evening.
        printBy: '2026-12-04',
        pressOn: '2026-12-05',
      },
    });
  });

  it('are earlier by a week where that Saturday is off', () => {
    const latest = latestDates(usual({ from: '2026-12-05', to: '2026-12-05' }), [clubWork], '2026-12-11', 4);
    expect(latest).toMatchObject({ dates: { orderBlanksBy: '2026-11-23', pressOn: '2026-11-28' } });
  });

  it('ask for the approval by the evening of printing where no blanks are ordered', () => {
    const latest = latestDates(usual(), [clubWork], '2026-12-11', null);
    expect(latest).toMatchObject({ dates: { orderBlanksBy: null, approveBy: '2026-12-04' } });
  });
});

describe('a load of accepted orders', () => {
  const club = order('club', '2026-12-11', clubWork);
  const names = order('names', '2026-12-04', looseWork(90));

  it('goes one behind another by wanted day, whatever the order it comes in', () => {
    const load = loadOf(usual(), [club, names], TODAY);
    expect(load.orders.map(({ id, daysLate }) => [id, daysLate])).toEqual([
      ['names', 0],
      ['club', 0],
    ]);
    const [first, second] = load.orders.map(({ planned }) =>
      planned.kind === 'planned' ? planned.plan : null,
    );
    // 90 min: Wednesday's hour and 30 of Thursday's; Friday is the buffer.
    expect([first?.firstDay, first?.lastDay, first?.ready]).toEqual([
      '2026-11-25',
      '2026-11-26',
      '2026-11-28',
    ]);
    expect(second?.sessions.map(({ day }) => day)).toEqual(['2026-11-28']);
  });

  it('tells by how much an order comes late', () => {
    // Ready on 3 December at the earliest; wanted on 1 December.
    const late = loadOf(usual(), [{ ...club, wantedOn: '2026-12-01' }], TODAY);
    expect(late.orders[0]?.daysLate).toBe(2);
  });

  it('keeps a new order waiting until all of it is done, and its blanks have come', () => {
    const load = loadOf(usual(), [club], TODAY);
    // The club is done on Tuesday 1 December; 9.4 … of its evening are used. Pressed on Saturday the 5th.
    const free = behindLoad(usual(), load, { works: [clubWork], blanks: null });
    expect(free).toMatchObject({ plan: { sessions: [{ day: '2026-12-05' }] } });
    // Ordered on 1 December, ten working days: there on the 15th; Saturday the 19th.
    const waits = behindLoad(usual(), load, {
      works: [clubWork],
      blanks: { ordered: '2026-12-01', lead: 10 },
    });
    expect(waits).toMatchObject({ plan: { sessions: [{ day: '2026-12-19' }], ready: '2026-12-24' } });
  });

  it('leaves the others their days where no block holds one of them, and says which', () => {
    const impossible = order('huge', '2026-11-26', {
      ...clubWork,
      press: clubWork.press && { ...clubWork.press, setUpMinutes: 300 },
    });
    const load = loadOf(usual(), [impossible, club], TODAY);
    expect(load.orders.map(({ planned }) => planned.kind)).toEqual(['noBlock', 'planned']);
    expect(load.until).not.toBeNull();
  });

  it('gives each order the last days that leave the later ones theirs', () => {
    const both = [
      { ...club, lead: 4 },
      { ...order('second', '2026-12-12', clubWork), lead: 4 },
    ];
    // Both would press on the 5th; the one wanted first has to press on 28 November.
    expect(
      latestOfAll(usual(), both).map(({ id, latest }) =>
        latest.kind === 'latest' ? [id, latest.dates.pressOn, latest.dates.orderBlanksBy] : [id],
      ),
    ).toEqual([
      ['club', '2026-11-28', '2026-11-23'],
      ['second', '2026-12-05', '2026-11-30'],
    ]);
  });
});

describe('what open quotes would do', () => {
  const club = order('club', '2026-12-11', clubWork);
  const accepted = { orders: [club], load: loadOf(usual(), [club], TODAY) };

  it('if all came is told in one go: how much, how much of it likely, and who would be late', () => {
    const quote = order('quote', '2026-12-04', clubWork);
    const told = ifAllCome(usual(), TODAY, accepted, [quote], 0.4);
    // 52.9 + 25 + 98.7 + a break of 10 + 79.3 + 10 + 44.4 + 12 + 30 = 362.3; 40 % are 144.92. The quote is wanted first
    // and takes the first Saturday; the club presses on the 5th, is done on the 8th and ready on the 10th: in time.
    expect(told?.minutes).toBeCloseTo(362.3, 9);
    expect(told?.expectedMinutes).toBeCloseTo(144.92, 9);
    expect(told?.late).toEqual([]);
    // With another one behind the first: pressed on the 12th.
    const two = ifAllCome(usual(), TODAY, accepted, [quote, { ...quote, id: 'other' }], 0.4);
    expect(two?.late.map(({ id }) => id)).toEqual(['other', 'club']);
    expect(two?.lateAnyway).toEqual([]);
    // 25 November to 11 December: 2 weeks and Wed, Thu, Fri.
    expect(two?.until).toMatchObject({ day: '2026-12-11', free: 2 * 540 + 180 });
    expect(two?.until?.needed).toBeCloseTo(3 * 362.3, 9);
  });

  it('is nothing where none is open', () => {
    expect(ifAllCome(usual(), TODAY, accepted, [], 0.4)).toBeNull();
  });

  it('stands beside what is accepted and free, week by week', () => {
    const weeks = weeksAhead(usual(), TODAY, accepted.load, [order('quote', null, looseWork(500))]);
    expect(weeks.map(({ monday, free }) => [monday, free])).toEqual([
      // Wednesday to Saturday are left of this week.
      ['2026-11-23', 420],
      ['2026-11-30', 540],
      ['2026-12-07', 540],
      ['2026-12-14', 540],
    ]);
    const tenths = (minutes: number) => Math.round(minutes * 10) / 10;
    // 52.9 + 223 + 17 this week, 27.4 + 12 + 30 in the next.
    expect(weeks.map(({ accepted }) => tenths(accepted))).toEqual([292.9, 69.4, 0, 0]);
    // From Tuesday 18:30 on: 30 + 60 × 3 + 240 = 450 in that week, 50 in the one after.
    expect(weeks.map(({ quoted }) => tenths(quoted))).toEqual([0, 450, 50, 0]);
  });
});

describe('the pace of the work', () => {
  it('is that of whoever takes longest a piece', () => {
    // 52.9 sheets at 2.5 min = 132.25, 178 min at the press, 352.3 of the hands, for 37 shirts.
    const pace = paceOf([{ pieces: 37, printer: 132.25, press: 178, hands: 352.3 }]);
    expect(pace?.bottleneck).toBe('hands');
    expect(pace?.each.press).toBeCloseTo(4.81, 2);
    expect(paceOf([{ pieces: 10, printer: 60, press: 80, hands: 50 }])?.bottleneck).toBe('press');
    expect(paceOf([{ pieces: 0, printer: 0, press: 0, hands: 0 }])).toBeNull();
    expect(paceOf([])).toBeNull();
    // Of two jobs together: 30 + 90 min at the press for 20 pieces, 80 of the hands.
    const both = paceOf([
      { pieces: 10, printer: 10, press: 30, hands: 50 },
      { pieces: 10, printer: 10, press: 90, hands: 30 },
    ]);
    expect(both).toMatchObject({ bottleneck: 'press', each: { press: 6 } });
  });

  it('counts only what is left: a step noted holds for all before it', () => {
    const none = { printed: false, pressed: false, packed: false, delivered: false };
    expect(workLeft(clubWork, none)).toEqual(clubWork);
    expect(workLeft(clubWork, { ...none, printed: true })).toEqual({ ...clubWork, before: [] });
    expect(workLeft(clubWork, { ...none, pressed: true })).toEqual({ ...clubWork, before: [], press: null });
    expect(workLeft(clubWork, { ...none, packed: true }).after).toEqual([{ what: 'deliver', minutes: 30 }]);
    expect(workLeft(clubWork, { ...none, delivered: true })).toEqual({ before: [], press: null, after: [] });
  });
});
