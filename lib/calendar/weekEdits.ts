import type { Block } from '@/shared/schemas/benchWeek';
import { DAY_MINUTES, WEEK_MINUTES } from './minutes';

/** Where most begin who work beside something else: in the evening, on a day off in the morning; from memory. */
const usualStart = (weekday: number) => (weekday < 5 ? 18 * 60 : 9 * 60);

/** @returns a further hour of a weekday: an hour after its last block, or where most begin. */
export function nextBlock(blocks: readonly Block[], weekday: number): Omit<Block, 'id'> {
  const ends = blocks
    .filter((block) => block.weekday === weekday)
    .map(({ fromMinute, minutes }) => Math.ceil(fromMinute + minutes));
  const start = ends.length === 0 ? usualStart(weekday) : Math.max(...ends) + 60;
  return { weekday, fromMinute: Math.min(start, DAY_MINUTES - 60), minutes: 60 };
}

/**
 * Gives days the blocks of another in place of their own.
 *
 * @param newId makes an id for each
 */
export const copyDay = (
  blocks: readonly Block[],
  from: number,
  to: readonly number[],
  newId: () => string,
): readonly Block[] => [
  ...blocks.filter(({ weekday }) => !to.includes(weekday)),
  ...to.flatMap((weekday) =>
    blocks.filter((block) => block.weekday === from).map((block) => ({ ...block, weekday, id: newId() })),
  ),
];

/** @returns ids of blocks that hold a minute which another one holds too. */
export function overlapping(blocks: readonly Block[]): ReadonlySet<string> {
  const spans = blocks.map(({ id, weekday, fromMinute, minutes }) => {
    const from = weekday * DAY_MINUTES + fromMinute;
    return { id, from, to: from + minutes };
  });
  const meets = (one: (typeof spans)[number], other: (typeof spans)[number]) =>
    [-WEEK_MINUTES, 0, WEEK_MINUTES].some((week) => one.from < other.to + week && other.from + week < one.to);
  return new Set(
    spans.filter((one) => spans.some((other) => other !== one && meets(one, other))).map(({ id }) => id),
  );
}
