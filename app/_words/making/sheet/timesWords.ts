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

/** @returns when work begins and how long it takes: “Sat 5 Dec 18:00, 25 min”. */
export function beginWords(parts: readonly ClockPart[], locale: string): string {
  const [first] = parts;
  if (first === undefined) return '';
  const minutes = parts.reduce((sum, part) => sum + part.minutes, 0);
  const begins = `${shortDayWords(first.day, locale)} ${clockWords(first.fromMinute, locale)}`;
  return `${begins}, ${minutesWords(Math.round(minutes), locale)}`;
}

// Helpers

const shortDayWords = (day: string, locale: string): string =>
  dayFormat(locale, { weekday: 'short', day: 'numeric', month: 'short' }).format(
    new Date(`${day}T00:00:00Z`),
  );
