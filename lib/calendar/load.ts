import { daysBetween } from '@/shared/days';
import type { BenchWork } from './benchWork';
import type { Calendar } from './calendar';
import { DAY_MINUTES, MOST_DAYS, minuteOf } from './minutes';
import { earliestPlan, type Latest, latestDates } from './orderDates';
import type { Planned } from './planWork';
import type { WorkPlan } from './workPlan';

/** An order as the calendar sees it. */
export interface OrderLoad {
  readonly id: string;
  /** Null where nobody has agreed on a day: it comes last. */
  readonly wantedOn: string | null;
  /** What is left of each of its jobs. */
  readonly works: readonly BenchWork[];
  /** Blanks still to come: the working day on which they are or were ordered, and working days to arrive. */
  readonly blanks: { readonly ordered: string; readonly lead: number } | null;
}

/** An order of which the last days are asked as well. */
export interface DatedOrder extends OrderLoad {
  /** Working days until its blanks arrive once they are ordered; null where none are still to be. */
  readonly lead: number | null;
}

export interface PlannedOrder {
  readonly id: string;
  readonly wantedOn: string | null;
  readonly planned: Planned;
  /** Days after the wanted day on which it can be ready first; 0 where it is in time or no day is agreed. */
  readonly daysLate: number;
}

export interface Load {
  readonly orders: readonly PlannedOrder[];
  /** The minute at which everything that a block can hold is done; null where something takes longer than anybody plans. */
  readonly until: number | null;
  /** The last minute that anybody plans for, whatever is ahead: else more work could bring a day forward from never. */
  readonly last: number;
}

/**
 * Orders one behind another by wanted day, none begun before the one ahead of it is done. So more work never brings
 * anything forward.
 *
 * @param from the first day at the bench
 * @param behind a minute before which none begins
 */
export function loadOf(
  calendar: Calendar,
  orders: readonly OrderLoad[],
  from: string,
  behind = Number.NEGATIVE_INFINITY,
): Load {
  let at: number | null = Math.max(minuteOf(from), behind);
  const last = minuteOf(from) + MOST_DAYS * DAY_MINUTES;
  const planned = byWantedDay(orders).map((order): PlannedOrder => {
    const { id, wantedOn } = order;
    const found: Planned =
      at === null ? { kind: 'never' } : endedBy(last, earliestPlan(calendar, order.works, at, order.blanks));
    // What no block can hold waits for no one, so that the others still have their days; it is told by its kind.
    if (found.kind !== 'noBlock') at = found.kind === 'planned' ? found.plan.span.to : null;
    return { id, wantedOn, planned: found, daysLate: daysLate(found, wantedOn) };
  });
  return { orders: planned, until: at, last };
}

/** @returns the first plan of a new order behind all that is accepted; its `ready` is the earliest honest day. */
export function behindLoad(
  calendar: Calendar,
  load: Load,
  order: Omit<OrderLoad, 'id' | 'wantedOn'>,
): Planned {
  return load.until === null
    ? { kind: 'never' }
    : endedBy(load.last, earliestPlan(calendar, order.works, load.until, order.blanks));
}

const endedBy = (last: number, planned: Planned): Planned =>
  planned.kind === 'planned' && planned.plan.span.to > last ? { kind: 'never' } : planned;

/** The latest plan of an order. */
interface LatestOrder {
  readonly id: string;
  readonly latest: Latest;
}

/**
 * The last days of every order with a wanted day, so that all of them can be kept: the last wanted is planned back from
 * its day, and each before it ends where the next begins.
 */
export function latestOfAll(calendar: Calendar, orders: readonly DatedOrder[]): readonly LatestOrder[] {
  const found: LatestOrder[] = [];
  let before = Number.POSITIVE_INFINITY;
  for (const { id, wantedOn, works, lead } of byWantedDay(orders).toReversed()) {
    if (wantedOn === null) continue;
    const latest = latestDates(calendar, works, wantedOn, lead, before);
    if (latest.kind === 'latest') before = Math.min(before, latest.dates.plan.span.from);
    found.push({ id, latest });
  }
  return found.toReversed();
}

const byWantedDay = <Order extends OrderLoad>(orders: readonly Order[]): readonly Order[] =>
  orders.toSorted((one, other) => {
    if (one.wantedOn === null || other.wantedOn === null)
      return Number(one.wantedOn === null) - Number(other.wantedOn === null);
    return daysBetween(other.wantedOn, one.wantedOn);
  });

const daysLate = (planned: Planned, wantedOn: string | null): number =>
  planned.kind === 'planned' && wantedOn !== null
    ? Math.max(0, daysBetween(wantedOn, planned.plan.ready))
    : 0;

/** @returns the plans of orders that can be planned. */
export const plansOf = ({ orders }: Load): readonly WorkPlan[] =>
  orders.flatMap(({ planned }) => (planned.kind === 'planned' ? [planned.plan] : []));
