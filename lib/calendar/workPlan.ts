import { addDays, addWorkingDays, daysBetween } from '@/shared/days';
import type { LooseKind } from './benchWork';
import { DAY_MINUTES, dayOfMinute, minuteOf } from './minutes';
import type { SessionPart } from './sessionParts';
import type { Span } from './span';
import type { Placed } from './walk';
import type { ExtraSessions, WorkTask } from './workTasks';

/** Working days between the last work and the day the goods are wanted. */
const BUFFER_DAYS = 1;

interface Dated {
  readonly day: string;
  /** Minutes after midnight, by the wall clock; it may run past the next midnight. */
  readonly fromMinute: number;
  readonly minutes: number;
}

/** One heating-up of the press. */
interface PlannedSession extends Dated {
  /** Good pieces. */
  readonly pieces: number;
  readonly parts: readonly (SessionPart & { readonly fromMinute: number })[];
}

/** Work without a hot press. */
interface PlannedLoose extends Dated {
  readonly what: LooseKind;
}

/** An order's work in free blocks. */
export interface WorkPlan {
  readonly sessions: readonly PlannedSession[];
  readonly loose: readonly PlannedLoose[];
  /** Days on which something is done, in order. */
  readonly days: readonly string[];
  readonly firstDay: string;
  readonly lastDay: string;
  /** First day for which the goods can be promised: a working day after the last. */
  readonly ready: string;
  /** Never silently: heatings-up that no price holds. */
  readonly extra: ExtraSessions;
  /** First and last minute of the work, as the calendar counts them. */
  readonly span: Span;
}

/**
 * @param idle the minute and the day that stand for the plan's where there is nothing to do
 * @returns the plan that placed tasks make
 */
export function planOf(
  placed: readonly Placed<WorkTask>[],
  extra: ExtraSessions,
  idle: { readonly minute: number; readonly day: string },
): WorkPlan {
  const from = placed.at(0)?.from ?? idle.minute;
  const to = placed.at(-1)?.to ?? idle.minute;
  const days = daysOf(placed);
  const firstDay = days.at(0) ?? idle.day;
  const lastDay = days.at(-1) ?? idle.day;
  return {
    sessions: placed.flatMap((one) =>
      one.task.holds.what === 'session' ? [sessionOf(one, one.task.holds)] : [],
    ),
    loose: placed.flatMap((one) =>
      one.task.holds.what === 'session' ? [] : [{ ...datedOf(one), what: one.task.holds.what }],
    ),
    ...{ days, firstDay, lastDay, ready: dayAfterBuffer(lastDay), extra, span: { from, to } },
  };
}

/** @returns the first wanted day that leaves the buffer after the last day at the bench. */
function dayAfterBuffer(lastBenchDay: string): string {
  let wanted = addDays(lastBenchDay, 1);
  while (daysBetween(lastBenchDay, lastBenchDayBefore(wanted)) < 0) wanted = addDays(wanted, 1);
  return wanted;
}

/** @returns the last day at the bench that leaves the buffer before the day the goods are wanted. */
export const lastBenchDayBefore = (wantedOn: string): string =>
  addDays(addWorkingDays(wantedOn, -BUFFER_DAYS), -1);

function datedOf({ from, to }: Span): Dated {
  const midnight = Math.floor(from / DAY_MINUTES) * DAY_MINUTES;
  return { day: dayOfMinute(midnight), fromMinute: from - midnight, minutes: to - from };
}

function sessionOf(
  span: Span,
  { pieces, parts }: Extract<WorkTask['holds'], { what: 'session' }>,
): PlannedSession {
  const dated = datedOf(span);
  let at = dated.fromMinute;
  return {
    ...dated,
    pieces,
    parts: parts.map((part) => {
      const begun = { ...part, fromMinute: at };
      at += part.minutes;
      return begun;
    }),
  };
}

/** Counted before they are written: most of what is done on a day is done beside other work of that day. */
function daysOf(spans: readonly Span[]): readonly string[] {
  const midnights = new Set<number>();
  for (const { from, to } of spans)
    for (let at = Math.floor(from / DAY_MINUTES) * DAY_MINUTES; at < to; at += DAY_MINUTES) midnights.add(at);
  return [...midnights].map(dayOfMinute);
}

/** @returns the minute at which a day is over. */
export const endOfDay = (day: string): number => minuteOf(day) + DAY_MINUTES;
