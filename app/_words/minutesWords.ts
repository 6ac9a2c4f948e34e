import { formatNumber } from '@/shared/formatNumber';

/** @returns hours as a person says them: 4.23 are “4 h 14 min”. */
export const hoursWords = (hours: number, locale: string): string =>
  hours === 0 ? '0 h' : minutesWords(hours * 60, locale);

/**
 * Minutes as a person says them: a few with a decimal, many as hours and minutes.
 *
 * @example minutesWords(452.3, 'en') // '7 h 32 min'
 */
export function minutesWords(minutes: number, locale: string): string {
  if (Math.abs(minutes) < 60) return `${formatNumber(minutes, locale, { maxDecimals: 1 })} min`;
  const whole = Math.round(minutes);
  const rest = whole % 60;
  const hours = `${formatNumber(Math.trunc(whole / 60), locale)} h`;
  return rest === 0 ? hours : `${hours} ${formatNumber(rest, locale)} min`;
}
