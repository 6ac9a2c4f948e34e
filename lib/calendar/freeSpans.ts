import type { Calendar } from './calendar';
import { DAY_MINUTES, MOST_DAYS, WEEK_MINUTES } from './minutes';
import { type Span, withoutSpans } from './span';

const MOST_MINUTES = MOST_DAYS * DAY_MINUTES;

/** Free spans from a minute on, in order, for as long as anybody plans ahead. */
export function* spansFrom(calendar: Calendar, from: number): Generator<Span> {
  // A night that began in the week before may still run.
  for (let week = Math.floor(from / WEEK_MINUTES) - 1; week * WEEK_MINUTES < from + MOST_MINUTES; week += 1)
    for (const span of spansOfWeek(calendar, week))
      if (span.to > from) yield { from: Math.max(from, span.from), to: span.to };
}

/**
 * Free spans back from a minute, the latest first, with their signs changed: what walks forward through them walks
 * back through time.
 */
export function* spansBack(calendar: Calendar, to: number): Generator<Span> {
  for (let week = Math.floor(to / WEEK_MINUTES); (week + 1) * WEEK_MINUTES > to - MOST_MINUTES; week -= 1)
    for (const span of spansOfWeek(calendar, week).toReversed())
      if (span.from < to) yield { from: -Math.min(to, span.to), to: -span.from };
}

const spansOfWeek = ({ week, off }: Calendar, number: number): readonly Span[] =>
  week.flatMap(({ from, to }) =>
    withoutSpans({ from: from + number * WEEK_MINUTES, to: to + number * WEEK_MINUTES }, off),
  );
