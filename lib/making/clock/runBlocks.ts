import { calendarOf, longestBlock } from '@/lib/calendar/calendar';
import { spansFrom } from '@/lib/calendar/freeSpans';
import { minuteOf } from '@/lib/calendar/minutes';
import { mergeSpans, type Span } from '@/lib/calendar/span';
import type { RunAsked } from '@/lib/making/runPlan';

/** When a run can be made. */
export interface RunBlocks {
  readonly isOwn: boolean;
  /** In one piece, min. */
  readonly longest: number;
  /** The first minute that may be used, as the calendar counts them. */
  readonly from: number;
  /** The minute in which it is planned. */
  readonly now: number;
  /** Free spans from a minute on, in order and apart. */
  readonly spansFrom: (minute: number) => Iterable<Span>;
}

/**
 * The run's own times as they stand, also where they are over or lie on days off, for the maker named the day; else the
 * week of the workshop from the minute in which it is planned.
 *
 * @returns null where nobody has said when the bench is free
 */
export function runBlocks({
  run,
  bench,
  today,
  nowMinute = 0,
}: Pick<RunAsked, 'run' | 'bench' | 'today' | 'nowMinute'>): RunBlocks | null {
  const { ownBlocks, startsOn } = run;
  const now = minuteOf(today) + nowMinute;
  const first = startsOn === null ? Number.NEGATIVE_INFINITY : minuteOf(startsOn);
  if (ownBlocks !== null) {
    const spans = mergeSpans(
      ownBlocks.map(({ day, fromMinute, minutes }) => {
        const from = minuteOf(day) + fromMinute;
        return { from, to: from + minutes };
      }),
    );
    const open = after(spans, first);
    return open.length === 0
      ? null
      : {
          isOwn: true,
          longest: Math.max(...open.map(({ from, to }) => to - from)),
          ...{ from: first, now },
          spansFrom: (minute) => after(open, minute),
        };
  }
  const calendar = calendarOf(bench);
  if (calendar === null || calendar.week.length === 0) return null;
  return {
    isOwn: false,
    longest: longestBlock(calendar),
    from: Math.max(first, now),
    now,
    spansFrom: (minute) => spansFrom(calendar, minute),
  };
}

const after = (spans: readonly Span[], minute: number): readonly Span[] =>
  spans.flatMap(({ from, to }) => (to > minute ? [{ from: Math.max(from, minute), to }] : []));
