import { spelledNumber } from '@/app/_words/spelledNumber';
import { daysBetween } from '@/shared/days';
import { shortDay } from './orderDayWords';

/** A day as it is said on another one: “today”, “tomorrow”, “Mon 30 Nov”; with its year where that is another. */
export function nearDayWords(day: string, today: string, locale: string): string {
  return nearDays.get(daysBetween(today, day)) ?? shortDay(day, today, locale);
}

/** @returns until when something is to be done: “today”, “by tomorrow”, “by Mon 30 Nov”. */
export const byDayWords = (day: string, today: string, locale: string): string =>
  day === today ? 'today' : `by ${nearDayWords(day, today, locale)}`;

/** @example daysWords(6) // 'six days' */
export const daysWords = (days: number): string => `${spelledNumber(days)} ${days === 1 ? 'day' : 'days'}`;

const nearDays: ReadonlyMap<number, string> = new Map([
  [-1, 'yesterday'],
  [0, 'today'],
  [1, 'tomorrow'],
]);
