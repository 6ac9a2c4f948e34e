import type { StallDay } from '@/shared/schemas/stallDay';

type OpenDay = Pick<StallDay['days'][number], 'fromMinute' | 'toMinute'>;

const MINUTES_OF_A_DAY = 24 * 60;

/** @returns minutes in which a stall is open on a day; one that ends after midnight counts to its end, 0 where it ends as it begins. */
export function openMinutes({ fromMinute, toMinute }: OpenDay): number {
  const minutes = toMinute - fromMinute;
  return minutes < 0 ? minutes + MINUTES_OF_A_DAY : minutes;
}

/** @returns hours in which a stall is open over all its days. */
export const openHours = ({ days }: { readonly days: readonly OpenDay[] }): number =>
  days.reduce((sum, day) => sum + openMinutes(day), 0) / 60;

/**
 * @param minute of the last day, or of the night after it where the stall is open beyond midnight
 * @returns whether the stall is open then, or opens later, or has closed; it is open where no day is set
 */
export function standingAt({ days }: Pick<StallDay, 'days'>, minute: number): 'open' | 'before' | 'after' {
  const last = days.toSorted((one, other) => (one.day < other.day ? -1 : 1)).at(-1);
  if (last === undefined) return 'open';
  const isOvernight = last.toMinute < last.fromMinute;
  if (isOvernight) return minute >= last.fromMinute || minute < last.toMinute ? 'open' : 'after';
  return minute < last.fromMinute ? 'before' : minute < last.toMinute ? 'open' : 'after';
}
