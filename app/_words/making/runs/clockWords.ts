import { clockWords } from '@/app/_words/clockWords';
import { elementNames } from '@/app/_words/elementNames';
import { minutesWords } from '@/app/_words/minutesWords';
import type { WorkElement } from '@/shared/schemas/making/runEvents';

/** The clock of a run. */
export const clockTable = {
  name: 'Clock of the run',
  work: 'Work',
  start: 'Start the clock',
  stop: 'Stop and note it',
  drop: 'Throw it away',
  note: 'Note it',
  time: 'It took',
  label: 'Time by the clock',
  missing: 'How long it took is missing.',
  notKept: 'This browser keeps nothing here: a reload would lose the clock.',
  nothing: 'The clock ran for no time, so nothing was noted.',
} as const;

/**
 * “Pressing since 7:04 PM, 1 h 12 min”
 *
 * @param fromMinute since midnight
 * @param minutes since then
 */
export function runningWords(
  element: WorkElement,
  fromMinute: number,
  minutes: number,
  locale: string,
): string {
  return `${elementNames[element]} since ${clockWords(fromMinute, locale)}, ${minutesWords(Math.max(0, Math.floor(minutes)), locale)}`;
}

/** What a clock that ran a whole night, or backwards, is asked. */
export const nightWords = (minutes: number, locale: string): string =>
  minutes < 0
    ? 'The clock of this device was set back meanwhile. A wrong time makes your pay an hour wrong: type how long it took.'
    : `The clock ran for ${minutesWords(minutes, locale)}. It counts as work and lowers your pay an hour: was it left running? Type how long it took, or note all of it.`;
