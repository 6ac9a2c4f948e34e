import type { Workshop } from '@/shared/schemas/workshop';
import { DAY_MINUTES, minuteOf, WEEK_MINUTES } from './minutes';
import { mergeSpans, type Span } from './span';

/** When the bench is free: the same minutes every week, but for the days off. */
export interface Calendar {
  /** Minutes after Monday's midnight, in order and apart; one that begins on Sunday may run into the next week. */
  readonly week: readonly Span[];
  /** Days off as minutes of the wall clock, in order and apart. */
  readonly off: readonly Span[];
}

/**
 * Blocks that overlap or touch are one, so that a session may lie across both.
 *
 * @returns null where nobody has said when the bench is free
 */
export function calendarOf({ blocks, daysOff }: Pick<Workshop, 'blocks' | 'daysOff'>): Calendar | null {
  if (blocks === null) return null;
  return {
    week: weekOf(
      blocks.map(({ weekday, fromMinute, minutes }) => {
        const from = weekday * DAY_MINUTES + fromMinute;
        return { from, to: from + minutes };
      }),
    ),
    off: mergeSpans(
      // Written the wrong way round they are the same days.
      daysOff.map(({ from, to }) => {
        const ends = [minuteOf(from), minuteOf(to)];
        return { from: Math.min(...ends), to: Math.max(...ends) + DAY_MINUTES };
      }),
    ),
  };
}

/** Merged beside the weeks before and after, for Sunday's night may touch Monday's morning. */
function weekOf(blocks: readonly Span[]): readonly Span[] {
  const weeks = [-WEEK_MINUTES, 0, WEEK_MINUTES].flatMap((shift) =>
    blocks.map(({ from, to }) => ({ from: from + shift, to: to + shift })),
  );
  const merged = mergeSpans(weeks);
  if (merged.some(({ from, to }) => from <= 0 && to >= WEEK_MINUTES)) return [{ from: 0, to: WEEK_MINUTES }];
  return merged.filter(({ from }) => from >= 0 && from < WEEK_MINUTES);
}

/** @returns the most minutes in one piece that a week has. */
export const longestBlock = ({ week }: Calendar): number =>
  week.reduce((most, { from, to }) => Math.max(most, to - from), 0);
