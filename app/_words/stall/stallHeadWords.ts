import { clockWords } from '@/app/_words/clockWords';
import type { Formatter } from '@/app/_words/formatter';
import { hoursWords } from '@/app/_words/minutesWords';
import { nearDayWords } from '@/app/_words/orders/nearDayWords';
import type { StallDay } from '@/shared/schemas/stallDay';
import { stallDaysWords } from './stallListWords';

/** @returns the line under the name of a stall day: “Sat 24 Apr, outdoors, 10:00 to 17:00” */
export function stallLineWords(stallDay: StallDay, today: string, locale: string): string {
  const { days, isOutdoor, place } = stallDay;
  const [first, ...others] = days;
  const hours =
    first !== undefined &&
    others.every(({ fromMinute, toMinute }) => fromMinute === first.fromMinute && toMinute === first.toMinute)
      ? `${clockWords(first.fromMinute, locale)} to ${clockWords(first.toMinute, locale)}`
      : '';
  const where = isOutdoor === null ? '' : isOutdoor ? 'outdoors' : 'indoors';
  return [stallDaysWords(stallDay, today, locale), hours, where, place]
    .filter((part) => part !== '')
    .join(', ');
}

/** @returns what each day of selling is called in a list: “Sat 24 Apr” */
export const openDayName = (day: string, today: string, locale: string): string =>
  nearDayWords(day, today, locale);

/**
 * @param isPressed some of what these hours make is pressed already
 * @returns “pays about 32 an hour, all 24 h 10 min” in its parts; null where it takes no time
 */
export function payWords(
  payPerHour: number | null,
  hours: number,
  { formatter, locale }: { readonly formatter: Pick<Formatter, 'number'>; readonly locale: string },
  isPressed = false,
): { readonly figure: string; readonly after: string } | null {
  if (payPerHour === null) return null;
  return {
    figure: formatter.number(payPerHour, 0),
    after: `an hour, all ${hoursWords(hours, locale)}${isPressed ? ', pressing done among it' : ''}`,
  };
}
