import type { BenchWork } from '@/lib/calendar/benchWork';
import type { Calendar } from '@/lib/calendar/calendar';
import { keptBeside } from '@/lib/calendar/keptBeside';
import { type DatedOrder, latestOfAll } from '@/lib/calendar/load';
import type { Latest } from '@/lib/calendar/orderDates';
import type { Planned } from '@/lib/calendar/planWork';
import { addDays, addWorkingDays } from '@/shared/days';

interface ToMake {
  readonly id: string;
  /** First day of selling; null where none is set. */
  readonly firstDay: string | null;
  /** What each of its jobs asks of the bench and of the supplier. */
  readonly jobs: readonly { readonly work: BenchWork; readonly lead: number | null }[];
}

/** When a stall day can be pressed for, beside the orders that were accepted. */
export interface MakingTimes {
  readonly planned: Planned;
  /** In time for the first day, and no order is made late by it. */
  readonly isKept: boolean;
  /** The last days on which it and all accepted orders can be kept; null where no day is set. */
  readonly latest: Latest | null;
}

/**
 * A stall day takes its place at the bench as an order does, by its first day and a working day to spare.
 *
 * @param accepted orders, as the calendar sees them
 * @param today the first day at the bench, and on which blanks could be ordered
 */
export function makingTimes(
  calendar: Calendar,
  accepted: readonly DatedOrder[],
  { id, firstDay, jobs }: ToMake,
  today: string,
): MakingTimes {
  const leads = jobs.flatMap(({ lead }) => lead ?? []);
  const lead = leads.length === 0 ? null : Math.max(...leads);
  const own: DatedOrder = {
    id,
    wantedOn: firstDay,
    works: jobs.map(({ work }) => work),
    // Today, or Monday on a weekend.
    blanks: lead === null ? null : { ordered: addWorkingDays(addDays(today, -1), 1), lead },
    lead,
  };
  const { planned, isKept } = keptBeside(calendar, accepted, own, today);
  return {
    ...{ planned, isKept },
    latest: latestOfAll(calendar, [...accepted, own]).find((one) => one.id === id)?.latest ?? null,
  };
}
