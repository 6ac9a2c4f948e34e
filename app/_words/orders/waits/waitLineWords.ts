import type { Formatter } from '@/app/_words/formatter';
import { dueWords, shortDay } from '@/app/_words/orders/orderDayWords';
import type { WaitsFor } from './waitNames';

interface Waited {
  readonly why: WaitsFor;
  readonly dueOn: string | null;
  /** The last day at the bench; null where it is of no bench, or not known. */
  readonly lastOn: string | null;
  /** Since when it waits; null where nobody noted it. */
  readonly since: string | null;
  /** When the customer was last asked again; null where never. */
  readonly reminded: string | null;
}

/** @returns the quiet line of a row: since when, by when, asked again when. */
export function rowLine(
  { why, dueOn: readyOn, lastOn, since, reminded }: Waited,
  today: string,
  locale: string,
  formatter: Formatter,
): string {
  const isSince = why === 'answer';
  const dueOn = lastOn ?? readyOn;
  const by = lastOn === null ? untilWords[why] : undefined;
  const from =
    since === null
      ? []
      : [`${sinceWords[why] ?? 'since'} ${since === today ? 'today' : shortDay(since, today, locale)}`];
  const until =
    dueOn === null || isSince
      ? []
      : [`${by ?? 'by'} ${shortDay(dueOn, today, locale)}, ${dueWords(dueOn, today, formatter)}`];
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

const READY = 'to be ready by';

/** What the day is, where nobody has to act by it. */
const untilWords: Readonly<Partial<Record<WaitsFor, string>>> = {
  ...{ decision: 'valid until', newQuote: 'ended' },
  ...{ print: READY, press: READY, check: READY, pack: READY },
};
