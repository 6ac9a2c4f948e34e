import { openMinutes } from '@/lib/stall/days/openHours';
import { addDays } from '@/shared/days';
import type { StallPlan } from '@/shared/schemas/stallPapers';

/** What a clock on the wall shows. */
export interface WallTime {
  /** YYYY-MM-DD. */
  readonly day: string;
  /** Since midnight, 0 to 1439. */
  readonly minute: number;
}

/** How a moment, ms since 1970, stands on the wall of whoever counts. */
export type WallClock = (at: number) => WallTime;

/** A moment by the day of selling that it belongs to. */
interface SellingTime {
  readonly day: string;
  /** Since the midnight that day began at; 1440 and more after the next. */
  readonly minute: number;
  /** False on a day that the plan does not name: the clock is wrong, or somebody sells on another day. */
  readonly isOfPlan: boolean;
}

/** Customers stay on after the end, and what is sold while packing up belongs to the same day, minutes. */
const AFTER_END = 120;
const MINUTES_OF_DAY = 1440;

/**
 * @returns where a moment belongs: what is sold after midnight, at a day that goes on beyond or ended less than two hours
 * ago, to the day it began
 */
export function sellingTime({ days }: Pick<StallPlan, 'days'>, { day, minute }: WallTime): SellingTime {
  const own = days.find((one) => one.day === day);
  const before = days.find((one) => one.day === addDays(day, -1));
  const sinceBefore = minute + MINUTES_OF_DAY;
  const isOfBefore =
    before !== undefined &&
    sinceBefore < endOf(before) + AFTER_END &&
    (own === undefined || minute < own.fromMinute);
  return isOfBefore
    ? { day: before.day, minute: sinceBefore, isOfPlan: true }
    : { day, minute, isOfPlan: own !== undefined };
}

/** @returns whether the prices of the last hour hold at a moment: from their minute of the last day on. */
export function isLastHour({ days, lastHourFrom }: StallPlan, wall: WallTime): boolean {
  const last = days.reduce<StallPlan['days'][number] | null>(
    (latest, one) => (latest === null || one.day > latest.day ? one : latest),
    null,
  );
  if (lastHourFrom === null || last === null) return false;
  const { day, minute } = sellingTime({ days }, wall);
  const isAfterMidnight = last.toMinute < last.fromMinute && lastHourFrom < last.fromMinute;
  const from = isAfterMidnight ? lastHourFrom + MINUTES_OF_DAY : lastHourFrom;
  return day === last.day && minute >= from;
}

/** Minutes since the midnight a day began at. */
const endOf = (day: StallPlan['days'][number]): number => day.fromMinute + openMinutes(day);
