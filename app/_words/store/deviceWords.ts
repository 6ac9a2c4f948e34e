import type { Formatter } from '@/app/_words/formatter';

/**
 * What a device is called by others.
 *
 * @param name what its maker calls it; null or empty where they never did
 * @example deviceNameWords({ name: null, letter: 'K' }) // => 'device K'
 */
export function deviceNameWords({
  name,
  letter,
}: {
  readonly name: string | null;
  readonly letter: string | null;
}): string {
  if (name !== null && name.trim() !== '') return name.trim();
  return letter === null ? 'another device' : `device ${letter}`;
}

/** @returns how the papers of a device are numbered. */
export const letterWords = (letter: string | null): string =>
  letter === null
    ? 'Nothing was numbered here yet. This device gets a letter with its first paper, so that two devices never number one alike.'
    : `Papers numbered here end in the letter ${letter}.`;

/**
 * The clock of a device that stands before what was noted on it.
 *
 * @param clockDay the day the clock tells, YYYY-MM-DD
 * @param notedDay the day of the latest that was noted here
 */
export function clockBehindWords(
  { clockDay, notedDay }: { readonly clockDay: string; readonly notedDay: string },
  formatter: Pick<Formatter, 'day'>,
): string {
  return clockDay === notedDay
    ? `The clock of this device stands before something that was noted here earlier on ${formatter.day(notedDay)}: set the clock. Until then new things stand before older ones.`
    : `The clock of this device says ${formatter.day(clockDay)}, but something was noted here on ${formatter.day(notedDay)}: set the clock. Until then new things stand before older ones.`;
}
