import type { Block } from '@/shared/schemas/benchWeek';
import type { Workshop } from '@/shared/schemas/workshop';

/** Hours free for the bench on Monday to Sunday. */
export type FreeHours = readonly number[];

const DAY_MINUTES = 1440;
const WEEK_MINUTES = 7 * DAY_MINUTES;

/**
 * The free hours of each weekday. Blocks that overlap count once; what runs past midnight belongs to the day after.
 *
 * @returns null where nobody has said when the bench is free
 */
export function freeHoursOf({ blocks }: Pick<Workshop, 'blocks'>): FreeHours | null {
  if (blocks === null) return null;
  const pieces = blocks
    .flatMap(({ weekday, fromMinute, minutes }) => daily(weekday * DAY_MINUTES + fromMinute, minutes))
    .toSorted((one, other) => one.from - other.from);
  const free = [0, 0, 0, 0, 0, 0, 0];
  let counted = 0;
  for (const { from, to } of pieces) {
    const day = Math.floor(from / DAY_MINUTES);
    free[day] = (free[day] ?? 0) + Math.max(0, to - Math.max(from, counted)) / 60;
    counted = Math.max(counted, to);
  }
  return free;
}

/** A block cut at midnight; Sunday's night belongs to Monday. */
function daily(start: number, minutes: number): readonly { readonly from: number; readonly to: number }[] {
  const midnight = (Math.floor(start / DAY_MINUTES) + 1) * DAY_MINUTES;
  const end = start + minutes;
  if (end <= midnight) return [{ from: start, to: end }];
  const next = midnight % WEEK_MINUTES;
  return [
    { from: start, to: midnight },
    { from: next, to: next + end - midnight },
  ];
}

/** An hour on weekday evenings and four on Saturday: how most begin. */
export const usualBlocks: readonly Block[] = [
  ...[0, 1, 2, 3, 4].map((weekday) => ({
    id: `block-${weekday + 1}`,
    weekday,
    fromMinute: 18 * 60,
    minutes: 60,
  })),
  { id: 'block-6', weekday: 5, fromMinute: 9 * 60, minutes: 240 },
];
