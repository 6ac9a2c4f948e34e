import { clockWords } from '@/app/_words/clockWords';
import type { DayCount } from '@/lib/stall/count/dayCount';

/** Whether the screen stays awake. */
export const wakeWords = {
  asking: '',
  awake: 'The screen stays awake while the count is open.',
  refused:
    'The phone did not let the screen stay awake, as with a low battery. It is asked again when you come back; until then it may go dark between sales.',
  unknown:
    'This browser cannot keep the screen awake: set a longer time until it goes dark in the settings of the phone.',
} as const;

/** @returns that a wish was counted: “Counted: youth sizes, 2 so far.” */
export const askedCountedWords = (words: string, times: number): string =>
  `Counted: ${words || 'something else'}, ${times} so far.`;

/** @returns an hour of the day: “10:00 to 11:00”; 24 and more are after midnight */
export const hourWords = (hour: number, locale: string): string =>
  `${clockWords(hour * 60, locale)} to ${clockWords((hour + 1) * 60, locale)}`;

/** @returns the count by hours in one line; null before the first sale */
export function busiestWords(hours: DayCount['hours'], locale: string): string | null {
  const most = hours.reduce<DayCount['hours'][number] | null>(
    (best, one) => (best === null || one.pieces > best.pieces ? one : best),
    null,
  );
  return most === null ? null : `most ${hourWords(most.hour, locale)}, ${most.pieces} sold`;
}
