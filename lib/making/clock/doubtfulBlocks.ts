import { DAY_MINUTES, minuteOf } from '@/lib/calendar/minutes';
import type { BlocksOverlap, RunTrouble } from '@/lib/making/runPlan';
import type { Run } from '@/shared/schemas/making/run';

type Blocks = Pick<Run, 'ownBlocks'>;

/** @returns own blocks that end when they begin: kept as a whole day, but nobody meant one */
export const emptyBlocks = ({ ownBlocks }: Blocks): readonly RunTrouble[] =>
  (ownBlocks ?? []).flatMap(({ day, fromMinute, minutes }): readonly RunTrouble[] =>
    minutes === DAY_MINUTES ? [{ kind: 'blockEmpty', day, fromMinute }] : [],
  );

/** @returns every own block that begins before an earlier one ends; one that begins as another ends is apart */
export function overlappingBlocks({ ownBlocks }: Blocks): readonly BlocksOverlap[] {
  const inOrder = (ownBlocks ?? [])
    .map(({ day, fromMinute, minutes }) => {
      const from = minuteOf(day) + fromMinute;
      return { day, from, to: from + minutes };
    })
    .toSorted((one, other) => one.from - other.from);
  return inOrder.flatMap(({ day, from }, at) => {
    const other = inOrder.slice(0, at).findLast(({ to }) => to > from);
    return other === undefined ? [] : [{ day, other: other.day }];
  });
}
