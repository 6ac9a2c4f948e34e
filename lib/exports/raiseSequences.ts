import { sameValue } from '@/lib/merging/sameValue';
import type { CalendarEntry } from './calendarFile';

type EntryNow = Omit<CalendarEntry, 'sequence' | 'isCancelled'>;

/**
 * Entries with the sequence that makes calendars take what changed: raised where something of an entry is another than
 * when it was last handed out, and an entry that is no more is called off.
 *
 * @param before what was handed out last
 * @param floor what a new entry begins with: more than it may have had where nobody remembers it
 */
export function raiseSequences(
  now: readonly EntryNow[],
  before: readonly CalendarEntry[],
  floor: number,
): readonly CalendarEntry[] {
  const known = new Map(before.map((entry) => [entry.id, entry]));
  const ids = new Set(now.map(({ id }) => id));
  return [
    ...now.map((entry): CalendarEntry => {
      const was = known.get(entry.id);
      if (was === undefined) return { ...entry, sequence: floor, isCancelled: false };
      const isUnchanged = sameValue({ ...entry, sequence: was.sequence, isCancelled: false }, was);
      return { ...entry, sequence: was.sequence + (isUnchanged ? 0 : 1), isCancelled: false };
    }),
    ...before
      .filter(({ id }) => !ids.has(id))
      .map((entry) =>
        entry.isCancelled ? entry : { ...entry, sequence: entry.sequence + 1, isCancelled: true },
      ),
  ];
}
