import type { Formatter } from '@/app/_words/formatter';
import { dueWords, shortDay } from './orderDayWords';
import type { WaitsFor } from './waitNames';

interface Waited {
  readonly why: WaitsFor;
  readonly dueOn: string | null;
  /** Since when it waits; null where nobody noted it. */
  readonly since: string | null;
  /** When the customer was last asked again; null where never. */
  readonly reminded: string | null;
}

/** @returns the quiet line of a row: since when, by when, asked again when. */
export function rowLine(
  { why, dueOn, since, reminded }: Waited,
  today: string,
  locale: string,
  formatter: Formatter,
): string {
  const isSince = why === 'answer';
  const from =
    since === null
      ? []
      : [`${sinceWords[why] ?? 'since'} ${since === today ? 'today' : shortDay(since, today, locale)}`];
  const until =
    dueOn === null || isSince
      ? []
      : [
          `${why === 'decision' ? 'valid until' : why === 'newQuote' ? 'ended' : 'by'} ${shortDay(dueOn, today, locale)}, ${dueWords(dueOn, today, formatter)}`,
        ];
  const again = reminded === null ? [] : [`asked again ${shortDay(reminded, today, locale)}`];
  const told = [...from, ...until, ...again];
  return told.length === 0 ? 'no day set' : told.join(', ');
}

const sinceWords: Readonly<Partial<Record<WaitsFor, string>>> = {
  answer: 'asked',
  decision: 'sent',
  approval: 'sent',
  blanks: 'ordered',
};
