import { describe, expect, it } from 'vitest';
import { wording } from '@/app/_words/findings/wording';
import { formatterFor } from '@/app/_words/formatter';
import { quoteDayCautions } from '@/app/_words/orders/quote/quoteDayWords';
import { calendarOf } from '@/lib/calendar/calendar';
import type { DatedOrder } from '@/lib/calendar/load';
import { usualBlocks } from '@/lib/calendar/usualBlocks';
import { quoteDates } from '@/lib/quotes/quoteDates';
import { clubWork, looseWork } from '@/tests/fixtures/benchWork';
import { club, clubWith } from '@/tests/fixtures/clubJob';
import { ready } from './quoteTools';

/** Wednesday 25 November 2026. */
const today = '2026-11-25';
const calendar = calendarOf({ blocks: [...usualBlocks], daysOff: [] });

interface Asking {
  readonly lead?: number | null;
  readonly load?: readonly DatedOrder[];
  readonly leadDays?: number | null;
}

/** Valid for two weeks, until Wednesday 9 December. */
const asked = { orderId: 'ours', works: [clubWork], today, validUntil: '2026-12-09' };

const dates = (wantedOn: string | null, { lead = 4, load = [], leadDays = null }: Asking = {}) =>
  quoteDates({ ...asked, calendar, lead, wantedOn, load, leadDays });

/** As much work as the club's, its blanks here already. */
const accepted = (id: string, wantedOn: string | null): DatedOrder => ({
  ...{ id, wantedOn, works: [clubWork], blanks: null, lead: null },
});

const none = { orderBlanksBy: null, approveBy: null, ready: null, leadDays: null };

// By hand, as a planner with a wall calendar would count (common practice): 60 min on weekday evenings, 240 on Saturday.
describe('the days of a quote', () => {
  it('wanted on Friday 11 December: pressed on Saturday the 5th, blanks ordered four working days before the 4th', () => {
    // From Monday 30 November four working days of that week and five of the next.
    expect(dates('2026-12-11')).toEqual({
      ...{ orderBlanksBy: '2026-11-30', approveBy: '2026-11-30', ready: '2026-12-11', leadDays: 9 },
    });
  });

  it('wanted on a day have no lead time that the bench cannot keep, however short a one is typed', () => {
    // Approved on Monday the 30th it is ready on the 11th: nine working days, as above. Twelve are the maker's own.
    expect(dates('2026-12-11', { leadDays: 1 })).toEqual(dates('2026-12-11'));
    expect(dates('2026-12-11', { leadDays: 1 }).leadDays).toBe(9);
    expect(dates('2026-12-11', { leadDays: 12 }).leadDays).toBe(12);
  });

  it('are a week earlier where another order needs that Saturday to be ready on the Monday after', () => {
    // The other is folded until Thursday the 10th and takes Saturday the 5th and half of the Friday before it, so that
    // ours is pressed on 28 November, its blanks ordered a working day before the 27th.
    const load = [accepted('other', '2026-12-14')];
    expect(dates('2026-12-11', { lead: 1, load })).toEqual({
      ...{ orderBlanksBy: '2026-11-26', approveBy: '2026-11-26', ready: '2026-12-11', leadDays: 11 },
    });
  });

  it('are the earliest that can be kept where the wanted day cannot', () => {
    // Four working days before 27 November are past; 1 December is before any Saturday with blanks.
    const load = [accepted('other', '2026-12-14')];
    expect(dates('2026-12-11', { load })).toEqual(dates(null, { load }));
    expect(dates('2026-12-01')).toEqual(dates(null));
  });

  it('promise no day for which an accepted order would be late', () => {
    // An hour each weekday evening: eight hours for the first take until Friday 4 December, six for ours until Monday
    // the 14th, so that with a day to spare it is ready on the 16th; planned back, the first would have begun on the
    // 24th of November. The lead time is from today to then, fifteen working days, and so is the day after the 9th.
    const evenings = calendarOf({
      blocks: ([0, 1, 2, 3, 4] as const).map((weekday) => ({
        ...{ id: `evening${weekday}`, weekday, fromMinute: 1080, minutes: 60 },
      })),
      daysOff: [],
    });
    const first = (wantedOn: string): DatedOrder => ({
      ...{ id: 'first', wantedOn, works: [looseWork(480)], blanks: null, lead: null },
    });
    const ours = (wantedOn: string, firstOn: string) =>
      quoteDates({
        ...{ ...asked, works: [looseWork(360)], calendar: evenings, lead: null, leadDays: null },
        ...{ wantedOn, load: [first(firstOn)] },
      });
    expect(ours('2026-12-14', '2026-12-11')).toMatchObject({ ready: '2026-12-30', leadDays: 15 });
    // Ours before the first could be kept, and would make that one late.
    expect(ours('2026-12-09', '2026-12-11').ready).toBe('2026-12-30');
    expect(ours('2026-12-17', '2026-12-11').ready).toBe('2026-12-17');
  });

  it('do not wait for the order itself', () => {
    expect(dates('2026-12-11', { load: [accepted('ours', '2026-12-11')] })).toEqual(dates('2026-12-11'));
  });

  it('without a wanted day are those of whoever approves on the last day the quote is valid', () => {
    // Blanks there on 15 December, pressed on Saturday the 19th, brought on Tuesday the 22nd, the 23rd to spare: eleven
    // working days after the 9th. Approved today it is pressed on the 5th and ready on the 10th, after eleven as well.
    expect(dates(null)).toEqual({
      ...{ orderBlanksBy: '2026-12-09', approveBy: '2026-12-09', ready: '2026-12-24', leadDays: 11 },
    });
  });

  it('without a wanted day take as long as they do behind everything that was accepted', () => {
    // The others take the Saturdays of 28 November and 5 December: approved today, ours is pressed on the 12th and ready
    // on Thursday the 17th, after sixteen working days; sixteen after the 9th it is 31 December.
    const load = [accepted('one', null), accepted('two', null)];
    expect(dates(null, { load })).toMatchObject({ ready: '2026-12-31', leadDays: 16 });
  });

  it('without a wanted day go by the maker’s own working days', () => {
    // Two of that week, five in each of the next three, Monday to Wednesday.
    expect(dates(null, { leadDays: 20 })).toMatchObject({ ready: '2027-01-06', leadDays: 20 });
    // Eleven are needed, whatever is typed.
    expect(dates(null, { leadDays: 1 })).toEqual(dates(null));
  });

  it('are none where no block holds a session, or nobody said when the bench is free', () => {
    const evenings = calendarOf({
      blocks: [{ id: 'short', weekday: 0, fromMinute: 1080, minutes: 20 }],
      daysOff: [],
    });
    for (const one of [evenings, null])
      for (const wantedOn of ['2026-12-11', null])
        expect(quoteDates({ ...asked, calendar: one, lead: 4, wantedOn, load: [], leadDays: null })).toEqual(
          none,
        );
  });
});

describe('the quote of the worked order', () => {
  it('has the days of its job’s work in the free blocks of the workshop', () => {
    expect(ready().body.dates).toEqual({
      ...{ orderBlanksBy: '2026-11-30', approveBy: '2026-11-30', ready: '2026-12-11', leadDays: 9 },
    });
  });

  it('goes by the maker’s own working days where the order says how many', () => {
    expect(ready({ order: { leadDays: 12 } }).body.dates.leadDays).toBe(12);
  });

  it('tells the maker of a lead time that was typed and is too short, and prints the longer one', () => {
    const order = { leadDays: 1 };
    const { body } = ready({ order });
    expect(body.dates.leadDays).toBe(9);
    expect(quoteDayCautions(order, body, formatterFor(club().workshop))).toEqual([
      wording(
        'A lead time of 1 working day is shorter than the bench can keep.',
        'It takes 9 working days. The quote says Dec 11, 2026.',
      ),
      // Fourteen days from the 25th; nine working days before the 11th is the 30th.
      wording(
        'It is valid until Dec 9, 2026, and its answer may come after Nov 30, 2026, the last day to approve.',
        'Dec 11, 2026 cannot be kept then. Let it be valid for fewer days, or agree on a later day.',
      ),
    ]);
  });

  it('has no days where nobody said when the bench is free', () => {
    expect(ready({ input: clubWith({ 'workshop.blocks': null }) }).body.dates).toEqual(none);
  });
});
