import { addDays, addWorkingDays, daysBetween } from '@/shared/days';
import type { BenchWork } from './benchWork';
import type { Calendar } from './calendar';
import { MINUTES_NOISE, minuteOf } from './minutes';
import { type Planned, planWork, planWorkBack } from './planWork';
import { sessionMinutes } from './sessionParts';
import { endOfDay, lastBenchDayBefore, type WorkPlan } from './workPlan';

/** The last days on which an order can be kept, walked back from the day it is wanted. */
export interface LatestDates {
  /** Null where no blanks are ordered. */
  readonly orderBlanksBy: string | null;
  /** Nothing is ordered or printed before the customer has approved and paid the deposit. */
  readonly approveBy: string;
  /** The last day on which printing can begin; null where nothing is printed. */
  readonly printBy: string | null;
  /** The day of the first session, or of the first work where nothing is pressed. */
  readonly pressOn: string;
  readonly plan: WorkPlan;
}

export type Latest =
  | { readonly kind: 'latest'; readonly dates: LatestDates }
  | Exclude<Planned, { kind: 'planned' }>;

/**
 * A working day to spare before the wanted day; blanks in the working day before the press is heated up, and ordered
 * the supplier's working days before that.
 *
 * @param lead working days from order to arrival; null where no blanks are ordered
 * @param before a minute by which the work must be done even so, for what comes after it
 */
export function latestDates(
  calendar: Calendar,
  works: readonly BenchWork[],
  wantedOn: string,
  lead: number | null,
  before = Number.POSITIVE_INFINITY,
): Latest {
  const end = Math.min(endOfDay(lastBenchDayBefore(wantedOn)), before);
  const planned = planWorkBack(calendar, works, end);
  if (planned.kind !== 'planned') return planned;
  const { plan } = planned;
  const pressOn = plan.sessions.at(0)?.day ?? plan.firstDay;
  const orderBlanksBy = lead === null ? null : addWorkingDays(addWorkingDays(pressOn, -1), -lead);
  return {
    kind: 'latest',
    dates: {
      orderBlanksBy,
      approveBy: orderBlanksBy === null ? plan.firstDay : earlier(orderBlanksBy, plan.firstDay),
      printBy: plan.loose.find(({ what }) => what === 'print')?.day ?? null,
      pressOn,
      plan,
    },
  };
}

/**
 * The first plan for an order that can be kept, from a minute on.
 *
 * @param ordered the working day on which blanks are ordered; null where none are
 * @param lead working days from order to arrival
 */
export function earliestPlan(
  calendar: Calendar,
  works: readonly BenchWork[],
  from: number,
  blanks: { readonly ordered: string; readonly lead: number } | null,
): Planned {
  if (blanks === null) return planWork(calendar, works, from);
  const arrived = addWorkingDays(blanks.ordered, blanks.lead);
  const pressFrom = minuteOf(addDays(arrived, 1));
  // Where nothing is pressed, what is left waits for the blanks as a whole.
  const isPressed = works.some(
    ({ press }) => press !== null && sessionMinutes(press, press.pieces) > MINUTES_NOISE,
  );
  return planWork(calendar, works, isPressed ? from : Math.max(from, pressFrom), pressFrom);
}

const earlier = (one: string, other: string): string => (daysBetween(one, other) < 0 ? other : one);
