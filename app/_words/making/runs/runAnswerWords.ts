import { clockWords } from '@/app/_words/clockWords';
import { dayFormat } from '@/app/_words/dayFormat';
import type { Formatter } from '@/app/_words/formatter';
import { spelledNumber } from '@/app/_words/spelledNumber';
import type { RunPlan } from '@/lib/making/runPlan';

/** An answer: its key figure, which is bold, and what comes after. */
export interface RunAnswerLine {
  readonly key: string;
  readonly after: string;
}

/** @example weekdayWords('2026-12-05', 'en') // 'Saturday 5 Dec' */
export const weekdayWords = (day: string, locale: string): string =>
  dayFormat(locale, { weekday: 'long', day: 'numeric', month: 'short' }).format(new Date(`${day}T00:00:00Z`));

/** @returns from when to when: “18:00 to 22:39”. */
const spanWords = (fromMinute: number, minutes: number, locale: string): string =>
  `${clockWords(fromMinute, locale)} to ${clockWords(fromMinute + minutes, locale)}`;

/** When a run is pressed, as it is planned or was frozen. */
interface PressedOn extends Pick<RunPlan, 'firstDay'> {
  readonly sessions: readonly Pick<RunPlan['sessions'][number], 'day' | 'fromMinute' | 'minutes'>[];
}

/**
 * When a run is pressed, what comes of it and how often the press is heated up.
 *
 * @example 'Saturday 5 Dec, 9:30 to 13:13' ': 37 pieces, one heating-up'
 */
export function runAnswerWords(
  { sessions, firstDay }: PressedOn,
  pieces: number,
  { count }: Formatter,
  locale: string,
): RunAnswerLine {
  const [first] = sessions;
  const heatings = sessions.length === 1 ? 'one heating-up' : `${spelledNumber(sessions.length)} heatings-up`;
  if (first === undefined)
    return { key: weekdayWords(firstDay, locale), after: `: ${count(pieces, 'piece')}, nothing is pressed` };
  const begins = `${weekdayWords(first.day, locale)}, ${spanWords(first.fromMinute, first.minutes, locale)}`;
  const last = sessions.at(-1) ?? first;
  const until = last.day === first.day ? '' : `, the last on ${weekdayWords(last.day, locale)}`;
  return { key: begins, after: `${until}: ${count(pieces, 'piece')}, ${heatings}` };
}
