/** Ink poured in, on one day. The tank is filled to the same mark each time. */
interface Refill {
  readonly day: string;
  readonly mL: number;
  /** Poured in before what was printed that day. */
  readonly beforePrints?: true;
}

/** All that was poured in on one day. */
interface RefillDay {
  readonly day: string;
  readonly mL: number;
  /** The prints of the day came after it. */
  readonly beforePrints: boolean;
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
 * came after the last is not refilled yet. Prints of a refill's day count before it, unless it says otherwise.
 *
 * @param refills days as YYYY-MM-DD, in any order
 */
export function inkIntervals(
  refills: readonly Refill[],
  runs: readonly PrintRun[],
  sessionDays: readonly SessionDay[],
): readonly InkInterval[] {
  const days = refillDays(refills);
  return days.slice(1).map((refill, index): InkInterval => {
    const before = days[index];
    const isBetween = ({ day }: { readonly day: string }) =>
      before !== undefined && isAfterRefill(day, before) && !isAfterRefill(day, refill);
    const here = runs.filter(isBetween);
    return {
      refillMl: refill.mL,
      inkAreaIn2: sum(here.map(({ prints, total, areaIn2 }) => prints * total * areaIn2)),
      prints: sum(here.map(({ prints }) => prints)),
      sessions: sum(sessionDays.filter(isBetween).map(({ sessions }) => sessions)),
    };
  });
}

/**
 * Refills of one day count together: the first may stand before the prints of the day, but once one of them came after
 * the prints, the tank was full then.
 *
 * @returns by day, rising
 */
export const refillDays = (refills: readonly Refill[]): readonly RefillDay[] =>
  [...new Set(refills.map(({ day }) => day))].sort().map((day) => {
    const here = refills.filter((refill) => refill.day === day);
    return {
      day,
      mL: sum(here.map(({ mL }) => mL)),
      beforePrints: here.every((refill) => refill.beforePrints === true),
    };
  });

/** @returns whether what was printed on a day took from the ink of a refill, rather than coming before it */
export const isAfterRefill = (day: string, refill: Pick<RefillDay, 'day' | 'beforePrints'>): boolean =>
  day > refill.day || (day === refill.day && refill.beforePrints);

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
