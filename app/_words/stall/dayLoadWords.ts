import { listed } from '@/app/_words/listed';
import { nearDayWords } from '@/app/_words/orders/nearDayWords';
import { shortDay } from '@/app/_words/orders/orderDayWords';

/** How days are said. */
interface Said {
  readonly today: string;
  readonly locale: string;
}

/**
 * @param days of selling as they follow one another
 * @param loads pieces for each
 * @returns “60 on the table for Sat 24 Apr, 36 more overnight for Sun 25 Apr.”; null for a single day
 */
export function dayLoadWords(
  days: readonly string[],
  loads: readonly number[],
  { today, locale }: Said,
): string | null {
  if (days.length < 2) return null;
  const told = days.map((day, at) => {
    const when = nearDayWords(day, today, locale);
    return at === 0
      ? `${loads[at] ?? 0} on the table for ${when}`
      : `${loads[at] ?? 0} more overnight for ${when}`;
  });
  return `${told.join(', ')}, by the visitors of each day.`;
}

/** @returns which of the pieces to press each day needs: “40 of these pieces are needed for Sat 24 Apr; 20 can wait until Sun 25 Apr if need be.”; null for a single day */
export function dayPressWords(
  days: readonly string[],
  presses: readonly number[],
  { today, locale }: Said,
): string | null {
  const [first, ...others] = days;
  if (first === undefined || others.length === 0) return null;
  const near = (day: string) => nearDayWords(day, today, locale);
  const later = others.map((day, at) => `${presses[at + 1] ?? 0} can wait until ${near(day)}`);
  return `${presses[0] ?? 0} of these pieces are needed for ${near(first)}; ${listed(later)} if need be.`;
}

/** @returns by its date, for paper has no tomorrow: what of a range a list to load by puts together: “Shirts, for Sat 24 Apr” */
export const loadNameWords = (
  range: string,
  day: string,
  isFirst: boolean,
  { today, locale }: Said,
): string => `${range}, ${isFirst ? 'for' : 'overnight for'} ${shortDay(day, today, locale)}`;
