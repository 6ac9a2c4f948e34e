import { dayFormat } from './dayFormat';

/**
 * The one way a time of day is written on the screen.
 *
 * @param minute since midnight, rounded to whole ones; from 1440 on it is of the day after
 * @param locale what the maker chose for numbers
 * @returns what a clock on the wall shows, as the maker's place writes it: “18:05” or “6:05 PM”
 */
export const clockWords = (minute: number, locale: string): string =>
  dayFormat(locale, { timeStyle: 'short' }).format(new Date(Math.round(minute) * 60_000));
