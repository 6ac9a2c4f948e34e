import { clockWords } from '@/app/_words/clockWords';
import { dayFormat } from '@/app/_words/dayFormat';
import { minutesWords } from '@/app/_words/minutesWords';
import type { ClockPart } from '@/shared/schemas/making/runPapers';

/**
 * When parts of the work are done, those of one day told together.
 *
 * @example 'Sat 5 Dec 18:25 to 20:04'
 */
export function timesWords(parts: readonly ClockPart[], locale: string): string {
  const days = [...new Set(parts.map(({ day }) => day))];
  return days
    .map((day) => {
      const own = parts.filter((part) => part.day === day);
      const from = Math.min(...own.map(({ fromMinute }) => fromMinute));
      const to = Math.max(...own.map(({ fromMinute, minutes }) => fromMinute + minutes));
      return `${shortDayWords(day, locale)} ${clockWords(from, locale)} to ${clockWords(to, locale)}`;
    })
    .join('; ');
}

/** @returns when work begins and how long it takes, of each day: “Sat 5 Dec 18:00, 25 min”. */
export function beginWords(parts: readonly ClockPart[], locale: string): string {
  const firsts = parts.filter(({ day }, at) => parts.findIndex((part) => part.day === day) === at);
  return firsts
    .map(({ day, fromMinute }) => {
      const minutes = parts.reduce((sum, part) => (part.day === day ? sum + part.minutes : sum), 0);
      const begins = `${shortDayWords(day, locale)} ${clockWords(fromMinute, locale)}`;
      return `${begins}, ${minutesWords(Math.round(minutes), locale)}`;
    })
    .join('; ');
}

// Helpers

const shortDayWords = (day: string, locale: string): string =>
  dayFormat(locale, { weekday: 'short', day: 'numeric', month: 'short' }).format(
    new Date(`${day}T00:00:00Z`),
  );
