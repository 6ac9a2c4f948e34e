import { minuteOf } from '@/lib/calendar/minutes';
import type { RunPlan } from '@/lib/making/runPlan';

/** How long sheets lie, and pieces until they are brought; minutes of the wall clock. */
interface Lying {
  /** From the last sheet printed to the first press. */
  readonly shortest: number;
  /** From there to the last heating-up's first press, or from the first sheets to the first of all: what is longer. */
  readonly longest: number;
  /** From the last press to the end of the way to the customer; null where that is not planned. */
  readonly untilBrought: number | null;
}

/** @returns null where nothing is printed or pressed */
export function lyingBetween({ clock }: Pick<RunPlan, 'clock'>): Lying | null {
  const parts = clock.map(({ what, session, day, fromMinute, minutes }) => {
    const from = minuteOf(day) + fromMinute;
    return { what, session, from, to: from + minutes };
  });
  const begun = parts.find(({ what }) => what === 'print');
  const printed = parts.findLast(({ what }) => what === 'print');
  const presses = parts.filter(({ what }) => what === 'test' || what === 'press');
  const [first, last] = [presses[0], presses.at(-1)];
  if (begun === undefined || printed === undefined || first === undefined || last === undefined) return null;
  const late = presses.find(({ session }) => session === last.session) ?? last;
  const brought = parts.findLast(({ what }) => what === 'deliver');
  return {
    shortest: first.from - printed.to,
    longest: Math.max(late.from - printed.to, first.from - begun.to),
    untilBrought: brought === undefined ? null : brought.to - last.to,
  };
}
