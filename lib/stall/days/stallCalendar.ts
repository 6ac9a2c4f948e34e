import { firstDayOf, lastDayOf } from '@/lib/stall/sellingDays';
import { compareText } from '@/shared/compareText';
import type { StallDay } from '@/shared/schemas/stallDay';

/** A stall day as the calendar lists it. */
export interface StallDayRow {
  readonly id: string;
  readonly stallDay: StallDay;
}

interface StallCalendar {
  /** Those that may still be sold at, the next one first; those without a day before all others, for it is missing. */
  readonly coming: readonly StallDayRow[];
  /** Sold out of, closed, refused or called off; the latest first. */
  readonly over: readonly StallDayRow[];
  readonly putAway: readonly StallDayRow[];
}

/**
 * @param today YYYY-MM-DD; a day is coming until it has passed or was closed
 * @param isClosed whether a close of the stall day of that id is in force
 */
export function stallCalendar(
  stallDays: Readonly<Record<string, StallDay>>,
  today: string,
  isClosed: (id: string) => boolean,
): StallCalendar {
  const rows = Object.entries(stallDays).map(([id, stallDay]): StallDayRow => ({ id, stallDay }));
  const here = rows.filter(({ stallDay }) => stallDay.archivedOn === null);
  const isOver = ({ id, stallDay }: StallDayRow) =>
    isClosed(id) ||
    stallDay.stage === 'refused' ||
    stallDay.stage === 'calledOff' ||
    (lastDayOf(stallDay) ?? today) < today;
  return {
    coming: here
      .filter((row) => !isOver(row))
      .toSorted((one, other) => byText(firstDayOf(one.stallDay), firstDayOf(other.stallDay), one, other)),
    over: here.filter(isOver).toSorted(latestFirst),
    putAway: rows.filter(({ stallDay }) => stallDay.archivedOn !== null).toSorted(latestFirst),
  };
}

// Helpers

/** Days are told in a form that sorts as text; names only keep rows of one day in a steady order. */
const byText = (one: string | null, other: string | null, ...rows: [StallDayRow, StallDayRow]): number =>
  compareText(one ?? '', other ?? '') || compareText(rows[0].stallDay.name, rows[1].stallDay.name);

const latestFirst = (one: StallDayRow, other: StallDayRow): number =>
  byText(lastDayOf(other.stallDay), lastDayOf(one.stallDay), one, other);
