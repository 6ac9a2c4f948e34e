import { addDays } from '@/shared/days';
import type { RunStandard } from '@/shared/schemas/making/runPapers';

/** One heating-up as the clock of a standard has it. */
interface FrozenSession {
  readonly day: string;
  /** Minutes after midnight by the wall clock. */
  readonly fromMinute: number;
  readonly minutes: number;
}

/** What a run was begun for, in short. */
interface FrozenPlan {
  readonly sessions: readonly FrozenSession[];
  readonly firstDay: string;
  readonly lastDay: string;
  /** Good pieces wanted, and blanks laid out for them. */
  readonly pieces: number;
  readonly take: number;
}

const DAY_MINUTES = 1440;

/** @returns days, heatings-up and pieces of a frozen standard */
export function frozenPlan({
  works,
  clock,
  issuedOn,
}: Pick<RunStandard, 'works' | 'clock' | 'issuedOn'>): FrozenPlan {
  const numbers = [...new Set(clock.flatMap(({ session }) => session ?? []))];
  const sizes = works.flatMap(({ lines }) => lines.flatMap((line) => line.sizes));
  const ends = clock.map(({ day, fromMinute, minutes }) => {
    // What ends at midnight is done on the day that ends there.
    const days = Math.max(0, Math.ceil((fromMinute + minutes) / DAY_MINUTES) - 1);
    return addDays(day, days);
  });
  return {
    sessions: numbers.flatMap((number): readonly FrozenSession[] => {
      const parts = clock.filter(({ session }) => session === number);
      const [first] = parts;
      if (first === undefined) return [];
      const from = Math.min(...parts.map(({ fromMinute }) => fromMinute));
      const to = Math.max(...parts.map(({ fromMinute, minutes }) => fromMinute + minutes));
      return [{ day: first.day, fromMinute: from, minutes: to - from }];
    }),
    firstDay: clock.map(({ day }) => day).toSorted()[0] ?? issuedOn,
    lastDay: ends.toSorted().at(-1) ?? issuedOn,
    pieces: sizes.reduce((sum, { wanted }) => sum + wanted, 0),
    take: sizes.reduce((sum, { take }) => sum + take, 0),
  };
}
