import { sameValue } from '@/lib/merging/sameValue';
import type { RateTaken } from '@/shared/schemas/making/learnedEvents';
import type { Lesson } from './lesson';
import { writtenFigure } from './measuredRate';

/** Lessons as they are told: what to do with each differs. */
export interface SortedLessons {
  /** Prices that were paid, the sizes of one blank together: each is taken over whole, in one step. */
  readonly paid: readonly (readonly Lesson[])[];
  /** Measured otherwise than assumed; where no document holds it, it is only watched. */
  readonly moved: readonly Lesson[];
  /** Came as assumed: there is nothing to take over. */
  readonly same: readonly Lesson[];
}

/**
 * What lessons ask for. One that is in force as it was taken over stands in none of them.
 *
 * @param taken in force, in order
 */
export function sortedLessons(lessons: readonly Lesson[], taken: readonly RateTaken[]): SortedLessons {
  const paid = new Map<string, Lesson[]>();
  const moved: Lesson[] = [];
  const same: Lesson[] = [];
  for (const lesson of lessons) {
    const { subject, places } = lesson;
    if (lesson.unit === 'money') {
      if (places.length === 0) continue;
      const key = subject.of === 'blankPrice' ? `blank ${subject.blankId}` : JSON.stringify(subject);
      paid.set(key, [...(paid.get(key) ?? []), lesson]);
    } else if (isAsAssumed(lesson)) same.push(lesson);
    else if (places.length > 0 || !isInForce(lesson, taken)) moved.push(lesson);
  }
  return { paid: [...paid.values()], moved, same };
}

/** What was taken over in one step: the sizes of one blank, or one figure. */
export type TakenTogether<Entry> = readonly [Entry, ...Entry[]];

/**
 * Entries of what was taken over, those of one blank and one step together, so that one tap takes them back.
 *
 * @param entries in force, in order
 * @returns the newest first
 */
export function takenTogether<
  Entry extends {
    readonly at: number;
    readonly device: string;
    readonly id: string;
    readonly body: RateTaken;
  },
>(entries: readonly Entry[]): readonly TakenTogether<Entry>[] {
  const groups = new Map<string, TakenTogether<Entry>>();
  for (const entry of entries) {
    const { subject } = entry.body;
    const key =
      subject.of === 'blankPrice' ? `${subject.blankId} ${entry.device} ${entry.at}` : `entry ${entry.id}`;
    const group = groups.get(key);
    groups.set(key, group === undefined ? [entry] : [...group, entry]);
  }
  return [...groups.values()].toReversed();
}

// Helpers

/** Equal as far as a figure is written. */
const isAsAssumed = ({ standard, measured }: Lesson): boolean =>
  writtenFigure(standard) === writtenFigure(measured);

function isInForce({ subject, measured, observations }: Lesson, taken: readonly RateTaken[]): boolean {
  const newest = taken.findLast((one) => sameValue(one.subject, subject));
  return (
    newest !== undefined &&
    newest.observations === observations &&
    writtenFigure(newest.value) === writtenFigure(measured)
  );
}
