import { minuteOf } from '@/lib/calendar/minutes';
import type { RunPlan } from '@/lib/making/runPlan';

/** How long sheets lie, and pieces until they are brought; minutes of the wall clock. */
interface Lying {
  /** The shortest of all heatings-up: from the last sheet printed for it to its first press. */
  readonly shortest: number;
  /** The longest: from the end of the first block with sheets for it to its first press. */
  readonly longest: number;
  /** From the last press to the end of the way to the customer; null where that is not planned. */
  readonly untilBrought: number | null;
}

interface Timed {
  readonly what: RunPlan['clock'][number]['what'];
  readonly session: number | null;
  readonly from: number;
  readonly to: number;
}

/** @returns null where nothing is printed or pressed */
export function lyingBetween({ clock }: Pick<RunPlan, 'clock'>): Lying | null {
  const parts = clock.map(({ what, session, day, fromMinute, minutes }): Timed => {
    const from = minuteOf(day) + fromMinute;
    return { what, session, from, to: from + minutes };
  });
  const presses = parts.filter(({ what }) => what === 'test' || what === 'press');
  const last = presses.at(-1);
  const lying = ofHeatings(
    parts.filter(({ what }) => what === 'print'),
    presses.filter((part, at) => part.session !== presses[at - 1]?.session || at === 0),
  );
  if (last === undefined || lying.length === 0) return null;
  const brought = parts.findLast(({ what }) => what === 'deliver');
  return {
    shortest: Math.min(...lying.map(({ shortest }) => shortest)),
    longest: Math.max(...lying.map(({ longest }) => longest)),
    untilBrought: brought === undefined ? null : brought.to - last.to,
  };
}

// Helpers

/**
 * Sheets printed since the heating-up before are for the one that comes; where there are none, it takes of those printed
 * last.
 *
 * @param firsts the first press of each heating-up
 */
function ofHeatings(
  prints: readonly Timed[],
  firsts: readonly Timed[],
): readonly Omit<Lying, 'untilBrought'>[] {
  let since = Number.NEGATIVE_INFINITY;
  return firsts.flatMap((first) => {
    const before = prints.filter(({ from }) => from < first.from);
    const own = before.filter(({ from }) => from >= since);
    since = first.from;
    const printed = before.at(-1);
    if (printed === undefined) return [];
    return [{ shortest: first.from - printed.to, longest: first.from - (own[0] ?? printed).to }];
  });
}
