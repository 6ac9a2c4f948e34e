/** Ink poured in, on one day. The tank is filled to the same mark each time. */
interface Refill {
  readonly day: string;
  readonly mL: number;
}

/** Prints of one day that are alike. */
interface PrintRun {
  readonly day: string;
  readonly prints: number;
  /** Sum of the channels over the print's own box, 0–4. */
  readonly total: number;
  readonly areaIn2: number;
}

interface SessionDay {
  readonly day: string;
  readonly sessions: number;
}

/** What was printed between one refill and the next, and the ink that put back. */
export interface InkInterval {
  readonly refillMl: number;
  /** Σ coverage × area × prints, in² of one channel in full. */
  readonly inkAreaIn2: number;
  readonly prints: number;
  readonly sessions: number;
}

/**
 * Puts prints and sessions to the refill that replaced their ink: each refill replaces what went since the one
 * before. What was printed before the first refill is left out, since nobody knows how full the tank was; what
 * came after the last is not refilled yet. Prints of a refill's day count before it.
 *
 * @param refills days as YYYY-MM-DD, in any order; two of one day count together
 */
export function inkIntervals(
  refills: readonly Refill[],
  runs: readonly PrintRun[],
  sessionDays: readonly SessionDay[],
): readonly InkInterval[] {
  const days = [...new Set(refills.map(({ day }) => day))].sort();
  return days.slice(1).map((day, index): InkInterval => {
    const before = days[index] ?? '';
    const isBetween = (entry: { readonly day: string }) => entry.day > before && entry.day <= day;
    const here = runs.filter(isBetween);
    return {
      refillMl: sum(refills.filter((refill) => refill.day === day).map(({ mL }) => mL)),
      inkAreaIn2: sum(here.map(({ prints, total, areaIn2 }) => prints * total * areaIn2)),
      prints: sum(here.map(({ prints }) => prints)),
      sessions: sum(sessionDays.filter(isBetween).map(({ sessions }) => sessions)),
    };
  });
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
