import type { BenchWork } from '@/lib/calendar/benchWork';
import { type Calendar, calendarOf } from '@/lib/calendar/calendar';
import { keptBeside } from '@/lib/calendar/keptBeside';
import { type DatedOrder, latestOfAll, loadOf } from '@/lib/calendar/load';
import { minuteOf } from '@/lib/calendar/minutes';
import { earliestPlan } from '@/lib/calendar/orderDates';
import { leadOf } from '@/lib/check/time/blanksToOrder';
import { benchWorkOf } from '@/lib/costing/benchWorkOf';
import { addDays, addWorkingDays, daysBetween, workingDaysBetween } from '@/shared/days';
import type { Quote } from '@/shared/schemas/orderPapers';
import type { Workshop } from '@/shared/schemas/workshop';
import type { PricedJob } from './pricedJob';
import type { QuoteAsked } from './quoteAsked';
import { wantedOnOf } from './wantedOnOf';

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
  /** The last day on which the quote can be accepted. */
  readonly validUntil: string;
  /** Working days as the maker wants them told; null where they are worked out. */
  readonly leadDays: number | null;
}

/**
 * The days that a quote may promise beside all that is accepted: for the day it is wanted the last on which blanks can
 * be ordered and the customer can approve. Where no day is agreed, or it cannot be kept, whoever approves on the last
 * day it is valid has it on the day that is told, and the lead time holds on that day and today.
 *
 * @returns no day where none is known, or where none can be kept
 */
export function quoteDates(asked: DatesAsked): Quote['dates'] {
  const { calendar, wantedOn, orderId, leadDays } = asked;
  const none = { ...noDates, leadDays };
  if (calendar === null) return none;
  // What was accepted in its own name makes way for itself.
  const load = asked.load.filter(({ id }) => id !== orderId);
  const beside = { ...asked, load };
  // A day that cannot be kept is not promised: the quote says the earliest that can.
  const wanted = wantedOn === null ? null : latest(beside, calendar, wantedOn);
  return wanted ?? earliest(beside, calendar) ?? none;
}

/** @returns the days of an order of priced jobs, beside all that is accepted. */
export function datesOfOrder(
  { orderId, order, load, day, validUntil }: QuoteAsked & { readonly validUntil: string },
  jobs: readonly PricedJob[],
  workshop: Pick<Workshop, 'blocks' | 'daysOff'>,
): Quote['dates'] {
  const leads = jobs.flatMap(({ costed }) => leadOf(costed.laidOut.job) ?? []);
  const wantedOn = wantedOnOf(
    order,
    jobs.map(({ input }) => input.job),
  );
  return quoteDates({
    ...{ orderId, load, wantedOn, today: day, validUntil },
    leadDays: order.leadDays,
    calendar: calendarOf(workshop),
    works: jobs.map(({ costed }) => benchWorkOf(costed)),
    lead: leads.length === 0 ? null : Math.max(...leads),
  });
}

// Helpers

const noDates: Quote['dates'] = { orderBlanksBy: null, approveBy: null, ready: null, leadDays: null };

function latest(
  { orderId, works, lead, load, today, leadDays }: DatesAsked,
  calendar: Calendar,
  wantedOn: string,
): Quote['dates'] | null {
  // Behind those that are wanted on the same day and were accepted before.
  const all = [...load, { id: orderId, wantedOn, works, blanks: null, lead }];
  const found = latestOfAll(calendar, all).find(({ id }) => id === orderId)?.latest;
  if (found?.kind !== 'latest') return null;
  const { orderBlanksBy, approveBy } = found.dates;
  if (daysBetween(today, approveBy) < 0) return null;
  const blanks = lead === null ? null : { ordered: workingDayFrom(today), lead };
  const own = { id: orderId, wantedOn, works, blanks };
  if (!keptBeside(calendar, load, own, today).isKept) return null;
  return {
    orderBlanksBy,
    approveBy,
    ready: wantedOn,
    leadDays: Math.max(leadDays ?? 0, workingDaysBetween(approveBy, wantedOn)),
  };
}

function earliest(
  { works, lead, load, today, validUntil, leadDays }: DatesAsked,
  calendar: Calendar,
): Quote['dates'] | null {
  const { until } = loadOf(calendar, load, today);
  /** Working days from an approval to the day it is ready, behind everything that was accepted. */
  const takes = (approvedOn: string): number | null => {
    if (until === null) return null;
    const blanks = lead === null ? null : { ordered: workingDayFrom(approvedOn), lead };
    const planned = earliestPlan(calendar, works, Math.max(until, minuteOf(approvedOn)), blanks);
    return planned.kind === 'planned'
      ? workingDaysBetween(approvedOn, workingDayFrom(planned.plan.ready))
      : null;
  };
  const [atOnce, atLast] = [takes(today), takes(validUntil)];
  if (atOnce === null || atLast === null) return null;
  // Fewer days than the bench needs would be a day that cannot be kept, whoever typed them.
  const days = Math.max(leadDays ?? 0, atOnce, atLast);
  return {
    orderBlanksBy: lead === null ? null : workingDayFrom(validUntil),
    approveBy: validUntil,
    ready: addWorkingDays(validUntil, days),
    leadDays: days,
  };
}

/** @returns the day, or Monday on a weekend. */
const workingDayFrom = (day: string): string => addWorkingDays(addDays(day, -1), 1);
