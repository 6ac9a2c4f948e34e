import type { BenchWork } from '@/lib/calendar/benchWork';
import { type Calendar, calendarOf } from '@/lib/calendar/calendar';
import { behindLoad, type DatedOrder, latestOfAll, loadOf } from '@/lib/calendar/load';
import { leadOf } from '@/lib/check/time/blanksToOrder';
import { benchWorkOf } from '@/lib/costing/benchWorkOf';
import { addDays, addWorkingDays, daysBetween, workingDaysBetween } from '@/shared/days';
import type { Quote } from '@/shared/schemas/orderPapers';
import type { Workshop } from '@/shared/schemas/workshop';
import type { PricedJob } from './pricedJob';
import type { QuoteAsked } from './quoteAsked';

interface DatesAsked {
  readonly orderId: string;
  /** Null where nobody has said when the bench is free. */
  readonly calendar: Calendar | null;
  /** Of each job. */
  readonly works: readonly BenchWork[];
  /** Working days until the slowest blank arrives; null where none is ordered. */
  readonly lead: number | null;
  /** Null where no day is agreed. */
  readonly wantedOn: string | null;
  /** Everything that was accepted. */
  readonly load: readonly DatedOrder[];
  readonly today: string;
}

/**
 * The days that a quote may promise beside all that is accepted: for the day it is wanted the last on which blanks can
 * be ordered and the customer can approve; where no day is agreed, the first day on which it is ready if approval and
 * deposit come today.
 *
 * @returns no day where none is known, or where none can be kept
 */
export function quoteDates(asked: DatesAsked): Quote['dates'] {
  const { calendar, wantedOn, orderId } = asked;
  if (calendar === null) return noDates;
  // What was accepted in its own name makes way for itself.
  const load = asked.load.filter(({ id }) => id !== orderId);
  return wantedOn === null
    ? earliest({ ...asked, load }, calendar)
    : latest({ ...asked, load }, calendar, wantedOn);
}

/** @returns the days of an order of priced jobs, beside all that is accepted. */
export function datesOfOrder(
  { orderId, load, day }: QuoteAsked,
  jobs: readonly PricedJob[],
  workshop: Pick<Workshop, 'blocks' | 'daysOff'>,
): Quote['dates'] {
  const leads = jobs.flatMap(({ costed }) => leadOf(costed.laidOut.job) ?? []);
  const [wantedOn = null] = jobs.flatMap(({ input }) => input.job.wantedOn ?? []).toSorted();
  return quoteDates({
    ...{ orderId, load, wantedOn, today: day },
    calendar: calendarOf(workshop),
    works: jobs.map(({ costed }) => benchWorkOf(costed)),
    lead: leads.length === 0 ? null : Math.max(...leads),
  });
}

// Helpers

const noDates: Quote['dates'] = { orderBlanksBy: null, approveBy: null, ready: null, leadDays: null };

function latest(
  { orderId, works, lead, load, today }: DatesAsked,
  calendar: Calendar,
  wantedOn: string,
): Quote['dates'] {
  // Behind those that are wanted on the same day and were accepted before.
  const all = [...load, { id: orderId, wantedOn, works, blanks: null, lead }];
  const found = latestOfAll(calendar, all).find(({ id }) => id === orderId)?.latest;
  if (found?.kind !== 'latest') return noDates;
  const { orderBlanksBy, approveBy } = found.dates;
  if (daysBetween(today, approveBy) < 0) return noDates;
  return { orderBlanksBy, approveBy, ready: wantedOn, leadDays: workingDaysBetween(approveBy, wantedOn) };
}

function earliest({ works, lead, load, today }: DatesAsked, calendar: Calendar): Quote['dates'] {
  // Today, or Monday on a weekend.
  const ordered = addWorkingDays(addDays(today, -1), 1);
  const blanks = lead === null ? null : { ordered, lead };
  const planned = behindLoad(calendar, loadOf(calendar, load, today), { works, blanks });
  if (planned.kind !== 'planned') return noDates;
  const { ready } = planned.plan;
  return {
    orderBlanksBy: blanks === null ? null : ordered,
    approveBy: today,
    ready,
    leadDays: workingDaysBetween(today, ready),
  };
}
