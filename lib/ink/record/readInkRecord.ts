import { inchesFromMm } from '@/shared/units';
import { ENOUGH_PRINTS, fitInkRecord, type InkFit } from './fitInkRecord';
import { type InkInterval, inkIntervals, isAfterRefill, refillDays } from './inkIntervals';
import type { InkRecord } from './inkRecordOf';

/** A refill beside what the prints before it explain. */
interface InkRefill extends InkInterval {
  readonly day: string;
  /** What laydown, loss and cleaning come to for it, mL; null while no laydown is fitted. */
  readonly explainedMl: number | null;
  /** More or less than a quarter of the refill, and than 5 mL, is left unexplained. */
  readonly isFarOff: boolean;
}

export type InkWants =
  /** Refills that have prints before them; two are the least: the first only fills the tank. */
  | { readonly kind: 'refills'; readonly has: number; readonly wants: number }
  | { readonly kind: 'prints'; readonly has: number; readonly wants: number }
  /** Sessions that do not keep step with printing, in at least three refills. */
  | { readonly kind: 'sessions'; readonly has: number; readonly wants: number };

/** What a record of ink tells, and what it still wants. */
export interface InkReading {
  readonly fit: InkFit;
  /** By day, rising; the first refill stands before all of them. */
  readonly refills: readonly InkRefill[];
  /** Ink put back after prints, mL. */
  readonly refilledMl: number;
  /** Prints noted before the first refill, as all are while there is none, or after the last. */
  readonly uncounted: { readonly before: number; readonly after: number };
  readonly wants: readonly InkWants[];
}

/** Common practice: what a deep clean or a batch nobody noted leaves behind is far more than drops spilt. */
const FAR_SHARE = 0.25;
const FAR_ML = 5;
const REFILLS_FOR_BOTH = 3;

/**
 * Reads the maker's record of ink.
 *
 * @param told share lost while printing, and the loss of a session in mL, as the workshop has them
 */
export function readInkRecord(
  record: InkRecord,
  told: { readonly loss: number; readonly sessionMl: number },
): InkReading {
  const runs = record.runs.map(({ day, prints, total, widthMm, heightMm }) => ({
    day,
    prints,
    total,
    areaIn2: inchesFromMm(widthMm) * inchesFromMm(heightMm),
  }));
  const intervals = inkIntervals(record.refills, runs, record.runs);
  const fit = fitInkRecord(intervals, told);
  const days = refillDays(record.refills);
  const refills = intervals.map((interval, index): InkRefill => {
    const explainedMl = explained(interval, fit, told.loss);
    const apart = explainedMl === null ? 0 : Math.abs(interval.refillMl - explainedMl);
    return {
      ...interval,
      day: days[index + 1]?.day ?? '',
      explainedMl,
      isFarOff: apart > FAR_ML && apart > FAR_SHARE * interval.refillMl,
    };
  });
  const printsOf = (entries: readonly { readonly prints: number }[]) =>
    entries.reduce((sum, { prints }) => sum + prints, 0);
  const [first] = days;
  const last = days.at(-1);
  return {
    fit,
    refills,
    refilledMl: refills.reduce((sum, { refillMl }) => sum + refillMl, 0),
    uncounted: {
      before: printsOf(record.runs.filter(({ day }) => first === undefined || !isAfterRefill(day, first))),
      after: printsOf(record.runs.filter(({ day }) => last !== undefined && isAfterRefill(day, last))),
    },
    wants: wantsOf(refills, fit, days.length),
  };
}

function explained(interval: InkInterval, fit: InkFit, loss: number): number | null {
  if (fit.kind !== 'fitted') return null;
  const { laydownMlPerIn2, sessionMl } = fit;
  return interval.inkAreaIn2 * laydownMlPerIn2.value * (1 + loss) + interval.sessions * sessionMl.value;
}

function wantsOf(refills: readonly InkRefill[], fit: InkFit, days: number): readonly InkWants[] {
  const used = refills.filter(({ prints, sessions }) => prints > 0 || sessions > 0).length;
  const prints = refills.reduce((sum, refill) => sum + refill.prints, 0);
  return [
    ...(days < 2 ? [{ kind: 'refills', has: days, wants: 2 } as const] : []),
    ...(prints < ENOUGH_PRINTS ? [{ kind: 'prints', has: prints, wants: ENOUGH_PRINTS } as const] : []),
    ...(fit.kind === 'fitted' && fit.of === 'both'
      ? []
      : [{ kind: 'sessions', has: used, wants: REFILLS_FOR_BOTH } as const]),
  ];
}
