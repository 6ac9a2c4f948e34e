import { clockWords } from '@/app/_words/clockWords';
import { dayFormat } from '@/app/_words/dayFormat';
import { minutesWords } from '@/app/_words/minutesWords';
import type { Block, DaysOff } from '@/shared/schemas/benchWeek';
import { weekdayWords } from './workshopWords';

const dayWords = (day: string, locale: string): string =>
  dayFormat(locale).format(new Date(`${day}T00:00:00Z`));

/** @returns what a block is called: "Monday 18:00 to 19:00". */
export const blockWords = ({ weekday, fromMinute, minutes }: Block, locale: string): string =>
  `${weekdayWords[weekday]} ${clockWords(fromMinute, locale)} to ${clockWords(fromMinute + minutes, locale)}`;

/** @returns how long a block is, and where it ends if that is not its own day. */
export function blockLengthWords({ weekday, fromMinute, minutes }: Block, locale: string): string {
  const long = minutesWords(minutes, locale);
  return fromMinute + minutes > 1440 ? `${long}, into ${weekdayWords[(weekday + 1) % 7]}` : long;
}

/** @returns what days off are called. */
export function daysOffWords({ from, to, what }: DaysOff, locale: string): string {
  const days = from === to ? dayWords(from, locale) : `${dayWords(from, locale)} to ${dayWords(to, locale)}`;
  return what === '' ? days : `${what}, ${days}`;
}
