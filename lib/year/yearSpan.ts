import { addDays } from '@/shared/days';

/** From a day to another, both among it, YYYY-MM-DD. */
export interface DaySpan {
  readonly from: string;
  readonly to: string;
}

/** Twelve months that are looked at together. */
export interface YearSpan extends DaySpan {
  readonly months: readonly DaySpan[];
}

/**
 * @param year the one in which it begins
 * @param firstMonth 1 for January to 12 for December
 */
export function yearSpan(year: number, firstMonth: number): YearSpan {
  const starts = Array.from({ length: 13 }, (_, at) => startOf(year, firstMonth + at));
  const months = starts.slice(0, 12).map((from, at) => ({ from, to: addDays(starts[at + 1] ?? from, -1) }));
  return { from: months[0]?.from ?? '', to: months.at(-1)?.to ?? '', months };
}

/** @returns the year, told by where it begins, that a day is of. */
export function yearOfDay(day: string, firstMonth: number): number {
  const [year, month] = [Number(day.slice(0, 4)), Number(day.slice(5, 7))];
  return month < firstMonth ? year - 1 : year;
}

export const isWithin = ({ from, to }: DaySpan, day: string): boolean => day >= from && day <= to;

// Helpers

/** @param month from 1; beyond 12 it is of the next year */
function startOf(year: number, month: number): string {
  const inYear = year + Math.floor((month - 1) / 12);
  return `${String(inYear).padStart(4, '0')}-${String(((month - 1) % 12) + 1).padStart(2, '0')}-01`;
}
