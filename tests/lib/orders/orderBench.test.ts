import { describe, expect, it } from 'vitest';
import { calendarOf } from '@/lib/calendar/calendar';
import { loadOf } from '@/lib/calendar/load';
import { latestDates } from '@/lib/calendar/orderDates';
import { usualBlocks } from '@/lib/calendar/usualBlocks';
import { benchClaim, orderBench } from '@/lib/orders/bench/orderLoad';
import { isBenchStep, lastDayOf } from '@/lib/orders/bench/stepDays';
import { boardOrders } from '@/lib/orders/board/orderBoard';
import { orderFacts } from '@/lib/orders/orderFacts';
import type { Order } from '@/shared/schemas/order';
import { clubWork, looseWork } from '@/tests/fixtures/benchWork';
import {
  anOrder,
  anOrderLog,
  approve,
  clubArtworks,
  clubQuote,
  happenedIn,
  type OrderLog,
  pay,
  quoteOut,
  steps,
  tell,
} from '@/tests/fixtures/orderLog';

/** A Thursday. */
const TODAY = '2026-11-26';

function only(log: OrderLog, change: Partial<Order> = {}) {
  const facts = orderFacts({
    orders: { 'order-1': anOrder({ jobIds: ['shirts', 'mugs'], wantedOn: '2026-12-14', ...change }) },
    artworksOfJob: () => clubArtworks,
    happened: happenedIn(log),
    habits: { currency: 'USD', revisionsIncluded: 2, creditDays: null, dayOf: () => TODAY },
  });
  const [one] = boardOrders(facts.values(), TODAY);
  if (one === undefined) throw new Error('no order');
  return one;
}

function ready(): OrderLog {
  const log = anOrderLog();
  tell(log, steps.enquired);
  const quote = quoteOut(log);
  tell(log, steps.quoted(quote.id));
  tell(log, steps.accepted(quote.id));
  for (const { artworkId, version } of clubArtworks) approve(log, artworkId, version);
  pay(log, 38066);
  return log;
}

const shirtsOnly = (jobId: string) => (jobId === 'shirts' ? { work: clubWork, lead: 4 } : null);

describe('what an order takes of the bench', () => {
  it('is open while it is asked, sure once it is accepted, and nothing once it went out or is put aside', () => {
    const log = anOrderLog();
    tell(log, steps.enquired);
    expect(benchClaim(only(log))).toBe('open');
    const accepted = ready();
    expect(benchClaim(only(accepted))).toBe('sure');
    expect(benchClaim(only(accepted, { archivedOn: TODAY }))).toBe('none');
    tell(accepted, { what: 'held', note: '' });
    expect(benchClaim(only(accepted))).toBe('none');
  });

  it('is what is known of its jobs, and jobs of which nothing is known are named', () => {
    const { load, unknown } = orderBench(only(ready()), shirtsOnly, TODAY);
    expect(load).toEqual({
      id: 'order-1',
      // Its quote says the 9th.
      wantedOn: '2026-12-09',
      works: [clubWork],
      blanks: { ordered: TODAY, lead: 4 },
      lead: 4,
    });
    expect(unknown).toEqual(['mugs']);
  });

  it('is as its quote reckoned for a job that cannot be reckoned any more', () => {
    const printing = (jobId: string, alternativeId: string | null, minutes: number, lead: number | null) => ({
      ...{ jobId, alternativeId, lead },
      work: { before: [{ what: 'print' as const, minutes }], press: null, after: [] },
    });
    const answered = (alternativeId: string | null) => {
      const log = anOrderLog();
      tell(log, steps.enquired);
      const { owner } = clubQuote();
      const work = [
        printing('mugs', null, 90, 7),
        printing('mugs', 'three-more', 100, 8),
        printing('shirts', null, 60, null),
      ];
      const quote = quoteOut(log, { owner: { ...owner, work } });
      tell(log, steps.quoted(quote.id));
      tell(log, { ...steps.accepted(quote.id), alternativeId });
      return orderBench(only(log), shirtsOnly, TODAY);
    };
    const asked = answered(null);
    // The shirts are known as they are now.
    expect(asked.load.works).toEqual([clubWork, looseWork(90)]);
    expect([asked.load.lead, asked.unknown, asked.quoted]).toEqual([7, [], ['mugs']]);
    const more = answered('three-more');
    expect([more.load.works[1], more.load.lead]).toEqual([looseWork(100), 8]);
  });

  it('is to be ready on the day its quote promised where no day is wanted', () => {
    const log = anOrderLog();
    tell(log, steps.enquired);
    // Its dates say the 9th.
    const quote = quoteOut(log);
    tell(log, steps.quoted(quote.id));
    const wantedOn = () => orderBench(only(log, { wantedOn: null }), shirtsOnly, TODAY).load.wantedOn;
    expect(wantedOn()).toBeNull();
    tell(log, steps.accepted(quote.id));
    expect(wantedOn()).toBe('2026-12-09');
  });

  it('is to be ready on the day its quote promised where that is later than was wanted, until another is wanted', () => {
    const log = anOrderLog();
    tell(log, steps.enquired);
    const dates = { orderBlanksBy: null, approveBy: null, ready: '2026-12-24', leadDays: 18 };
    const quote = quoteOut(log, { wantedOn: '2026-12-04', dates });
    tell(log, steps.quoted(quote.id));
    const keeps = (wantedOn: string) => orderBench(only(log, { wantedOn }), shirtsOnly, TODAY).load.wantedOn;
    expect(keeps('2026-12-04')).toBe('2026-12-04');
    tell(log, steps.accepted(quote.id));
    expect(keeps('2026-12-04')).toBe('2026-12-24');
    // Agreed on after the quote was made.
    expect([keeps('2026-12-16'), keeps('2026-12-30')]).toEqual(['2026-12-16', '2026-12-30']);
    const { standing, turn } = only(log, { wantedOn: '2026-12-04' });
    expect(standing.track.find(({ stage }) => stage === 'delivered')?.by).toBe('2026-12-24');
    expect(turn.dueOn).toBeNull();
    for (const { artworkId, version } of clubArtworks) approve(log, artworkId, version);
    pay(log, 76131);
    tell(log, steps.plain('packed'));
    expect(only(log, { wantedOn: '2026-12-04' }).turn).toMatchObject({
      dueOn: '2026-12-24',
      waits: [{ why: 'deliver' }],
    });
  });

  it('does not go ahead of an order that was promised sooner because it had been wanted sooner', () => {
    const log = anOrderLog();
    const ready = (day: string) => ({ orderBlanksBy: null, approveBy: null, ready: day, leadDays: null });
    const accept = (orderId: string, wantedOn: string, promised: string) => {
      const quote = quoteOut(log, { wantedOn, dates: ready(promised) }, { orderId });
      tell(log, steps.accepted(quote.id), { orderId });
    };
    accept('sooner', '2026-12-07', '2026-12-07');
    accept('later', '2026-12-04', '2026-12-24');
    const facts = orderFacts({
      orders: {
        later: anOrder({ jobIds: ['mugs'], wantedOn: '2026-12-04' }),
        sooner: anOrder({ jobIds: ['shirts'], wantedOn: '2026-12-07' }),
      },
      artworksOfJob: () => clubArtworks,
      happened: happenedIn(log),
      habits: { currency: 'USD', revisionsIncluded: 2, creditDays: null, dayOf: () => TODAY },
    });
    const loads = boardOrders(facts.values(), TODAY).map(
      (order) => orderBench(order, () => ({ work: looseWork(480), lead: null }), TODAY).load,
    );
    const calendar = calendarOf({ blocks: [...usualBlocks], daysOff: [] });
    if (calendar === null) throw new Error('no hours');
    /*
     * An hour an evening, four on Saturday. The first: 1 + 1 + 4 h by Saturday the 28th, 1 + 1 h by Tuesday; with a
     * working day to spare it is ready on Thursday. The second: 3 h by Friday, 4 h on Saturday the 5th, 1 h on Monday;
     * ready on Wednesday the 9th.
     */
    expect(
      loadOf(calendar, loads, TODAY).orders.map(({ id, planned, daysLate }) => [
        ...[id, planned.kind === 'planned' && planned.plan.ready, daysLate],
      ]),
    ).toEqual([
      ['sooner', '2026-12-03', 0],
      ['later', '2026-12-09', 0],
    ]);
  });

  it('waits for blanks from the day on which they were ordered, and for none once they are here', () => {
    const log = ready();
    tell(log, { what: 'blanksOrdered', note: '' }, { day: '2026-11-25' });
    const ordered = orderBench(only(log), shirtsOnly, TODAY).load;
    expect([ordered.blanks, ordered.lead]).toEqual([{ ordered: '2026-11-25', lead: 4 }, null]);
    tell(log, { what: 'goodsIn', note: '' });
    const here = orderBench(only(log), shirtsOnly, TODAY).load;
    expect([here.blanks, here.lead]).toEqual([null, null]);
  });

  it('could order its blanks on Monday where today is a Saturday', () => {
    expect(orderBench(only(ready()), shirtsOnly, '2026-11-28').load.blanks?.ordered).toBe('2026-11-30');
  });

  it('is less once it was printed, and less again once it was pressed', () => {
    const log = ready();
    tell(log, { what: 'printed', note: '' });
    const printed = orderBench(only(log), shirtsOnly, TODAY).load.works;
    expect(printed.map(({ before, press }) => [before.length, press?.pieces])).toEqual([[0, 37]]);
    tell(log, { what: 'pressed', note: '' });
    const pressed = orderBench(only(log), shirtsOnly, TODAY).load.works;
    expect(pressed.map(({ press, after }) => [press, after.length])).toEqual([[null, 3]]);
  });
});

describe('the last days of work at the bench', () => {
  /*
   * An hour on weekdays, four on Saturday. For Monday the 14th all is done on Thursday the 10th: the way, packing and
   * 18 of 44.4 min of folding; the rest of it on Wednesday the 9th. 223 min at the press go into Saturday the 5th only,
   * with 17 of 52.9 of printing before; the rest of it on Friday the 4th.
   */
  const calendar = calendarOf({ blocks: [...usualBlocks], daysOff: [] });
  if (calendar === null) throw new Error('no calendar');
  const latest = latestDates(calendar, [clubWork], '2026-12-14', 4);
  const days = (of: typeof latest | null) =>
    (['print', 'press', 'check', 'pack'] as const).map((why) => lastDayOf(why, of));

  it('are those on which the calendar, reckoned back from the wanted day, begins with it', () => {
    expect(days(latest)).toEqual(['2026-12-04', '2026-12-05', '2026-12-09', '2026-12-10']);
  });

  it('are not known where nothing is planned, and of what nothing is left', () => {
    expect(days(null)).toEqual([null, null, null, null]);
    const pressed = { ...clubWork, before: [], press: null };
    expect(days(latestDates(calendar, [pressed], '2026-12-14', null))).toEqual([
      ...[null, null, '2026-12-09', '2026-12-10'],
    ]);
    expect(days({ kind: 'never' })).toEqual([null, null, null, null]);
  });

  it('are of those waits alone that need the bench', () => {
    expect((['print', 'pack', 'orderBlanks', 'deliver'] as const).map(isBenchStep)).toEqual([
      ...[true, true, false, false],
    ]);
  });
});
