import { dayFormat } from '@/app/_words/dayFormat';
import type { Formatter } from '@/app/_words/formatter';
import { daysBetween } from '@/shared/days';

/** A day where it is told when something was: with its year where that is another than today’s. */
export function shortDay(day: string, today: string, locale: string): string {
  const moment = new Date(`${day}T00:00:00Z`);
  if (Number.isNaN(moment.getTime())) return day;
  const year = day.slice(0, 4) === today.slice(0, 4) ? {} : ({ year: 'numeric' } as const);
  return dayFormat(locale, { weekday: 'short', day: 'numeric', month: 'short', ...year })
    .format(moment)
    .replace(',', '');
}

/** @returns how far a due day is: “today”, “in 4 days”, “3 days late”. */
export function dueWords(day: string, today: string, formatter: Formatter): string {
  const days = daysBetween(today, day);
  if (days === 0) return 'today';
  if (days === 1) return 'tomorrow';
  return days > 0 ? `in ${formatter.count(days, 'day')}` : `${formatter.count(-days, 'day')} late`;
}

/** More days than this ago a day is asked about: by then it is more often a slip of the year. */
const LONG_AGO_DAYS = 330;

/** What went out before anybody could answer it. */
export interface WentOut {
  readonly what: 'quote' | 'proof';
  readonly on: string;
}

/**
 * @param out what is answered on that day; null where nothing is
 * @returns what is asked about a day that something happened on; null for one that needs no question
 */
export function dayQuestion(
  day: string,
  today: string,
  formatter: Formatter,
  out: WentOut | null = null,
): string | null {
  const days = daysBetween(day, today);
  if (days < 0)
    return `That is ${dueWords(day, today, formatter)}. What is noted here has happened already: is the day right?`;
  if (out !== null && day < out.on)
    return `That is before the ${out.what} went out, on ${formatter.day(out.on)}. Is the day right?`;
  return days > LONG_AGO_DAYS ? `That is ${formatter.count(days, 'day')} ago. Is the year right?` : null;
}

/** @returns how the day to keep is called: it was wanted, or the accepted quote promised another. */
export const dueName = (dueOn: string, wantedOn: string | null): string =>
  dueOn === wantedOn ? 'wanted' : 'promised for';
