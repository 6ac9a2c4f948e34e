import type { InkInterval } from './inkIntervals';
import { studentT95 } from './studentT';

/** A figure from the maker's record with how sure it is. */
export interface Fitted {
  readonly value: number;
  /** Where the true value lies 19 times of 20; null where one refill alone tells nothing of scatter. */
  readonly range: { readonly from: number; readonly to: number } | null;
}

/** What refills tell of the printer's ink. */
export type InkFit =
  /** Nothing printed between two refills yet, or cleaning alone is told to have taken all. */
  | { readonly kind: 'tooLittle'; readonly intervals: number; readonly prints: number }
  | {
      readonly kind: 'fitted';
      /** `both` once session counts vary enough; else the session loss is the one told. */
      readonly of: 'laydown' | 'both';
      readonly laydownMlPerIn2: Fitted;
      readonly sessionMl: Fitted;
      /** Ink that cleaning took of all ink refilled, 0–1. */
      readonly cleaningShare: number;
      readonly intervals: number;
      /** Prints behind the figures: shown as "measured (n)". */
      readonly prints: number;
      /** True from `ENOUGH_PRINTS` on; below it the typical figure is the better guess. */
      readonly isEnough: boolean;
    };

/** Prints behind a laydown that may replace the typical one; common practice. */
export const ENOUGH_PRINTS = 200;

/** Sessions and printed ink that keep step tell nothing apart: share of sessions not explained by ink, squared. */
const LEAST_APART = 0.02;

/**
 * Works out laydown, and session loss once it can be told apart, by least squares over
 * `refill = inkArea × laydown × (1 + loss) + sessions × sessionMl`.
 *
 * @param loss share lost while printing, which refills cannot tell from laydown, 0–1
 * @param sessionMl the loss of a session as told so far, mL
 */
export function fitInkRecord(
  record: readonly InkInterval[],
  { loss, sessionMl }: { readonly loss: number; readonly sessionMl: number },
): InkFit {
  // A stretch of cleaning without prints tells of the session loss alone.
  const used = record.filter(({ inkAreaIn2, sessions }) => inkAreaIn2 > 0 || sessions > 0);
  const prints = used.reduce((sum, interval) => sum + interval.prints, 0);
  const tooLittle: InkFit = { kind: 'tooLittle', intervals: used.length, prints };
  if (used.every(({ inkAreaIn2 }) => inkAreaIn2 === 0)) return tooLittle;
  const both = fitBoth(used);
  const fit = both !== null && both.laydown.value > 0 && both.session.value >= 0 ? both : null;
  const { laydown, session } = fit ?? fitLaydown(used, sessionMl);
  if (!(laydown.value > 0)) return tooLittle;
  const refilled = used.reduce((sum, { refillMl }) => sum + refillMl, 0);
  const sessions = used.reduce((sum, interval) => sum + interval.sessions, 0);
  return {
    kind: 'fitted',
    of: fit === null ? 'laydown' : 'both',
    laydownMlPerIn2: scaled(laydown, 1 / (1 + loss)),
    sessionMl: session,
    cleaningShare: Math.min(1, (sessions * session.value) / refilled),
    intervals: used.length,
    prints,
    isEnough: prints >= ENOUGH_PRINTS,
  };
}

interface Pair {
  /** mL an in² with the loss in printing inside. */
  readonly laydown: Fitted;
  readonly session: Fitted;
}

/** Both by the normal equations; null with fewer than three refills or where the two go hand in hand. */
function fitBoth(used: readonly InkInterval[]): Pair | null {
  const dot = (a: keyof InkInterval, b: keyof InkInterval) =>
    used.reduce((sum, each) => sum + each[a] * each[b], 0);
  const areas = dot('inkAreaIn2', 'inkAreaIn2');
  const sessions = dot('sessions', 'sessions');
  const mixed = dot('inkAreaIn2', 'sessions');
  const determinant = areas * sessions - mixed * mixed;
  if (used.length < 3 || sessions === 0 || determinant < LEAST_APART * areas * sessions) return null;
  const inkArea = dot('inkAreaIn2', 'refillMl');
  const inkSessions = dot('sessions', 'refillMl');
  const laydown = (inkArea * sessions - inkSessions * mixed) / determinant;
  const session = (areas * inkSessions - mixed * inkArea) / determinant;
  const freedom = used.length - 2;
  const variance = scatter(used, laydown, session) / freedom;
  return {
    laydown: withRange(laydown, Math.sqrt((variance * sessions) / determinant), freedom),
    session: withRange(session, Math.sqrt((variance * areas) / determinant), freedom),
  };
}

/** The laydown alone: what was refilled, less what the sessions took, over the ink area, all in one. */
function fitLaydown(used: readonly InkInterval[], sessionMl: number): Pair {
  const sum = (pick: (interval: InkInterval) => number) =>
    used.reduce((total, interval) => total + pick(interval), 0);
  const area = sum(({ inkAreaIn2 }) => inkAreaIn2);
  const laydown = sum(({ refillMl, sessions }) => refillMl - sessions * sessionMl) / area;
  const session = { value: sessionMl, range: null };
  const freedom = used.length - 1;
  if (freedom === 0) return { laydown: { value: laydown, range: null }, session };
  // Error of a ratio of sums: the scatter of each interval around it, over the whole area.
  const variance = scatter(used, laydown, sessionMl) / freedom;
  const error = Math.sqrt(variance * used.length) / area;
  return { laydown: withRange(laydown, error, freedom), session };
}

const scatter = (used: readonly InkInterval[], laydown: number, session: number) =>
  used.reduce(
    (sum, each) => sum + (each.refillMl - each.inkAreaIn2 * laydown - each.sessions * session) ** 2,
    0,
  );

function withRange(value: number, error: number, freedom: number): Fitted {
  const reach = studentT95(freedom) * error;
  return { value, range: { from: Math.max(0, value - reach), to: value + reach } };
}

const scaled = ({ value, range }: Fitted, factor: number): Fitted => ({
  value: value * factor,
  range: range === null ? null : { from: range.from * factor, to: range.to * factor },
});
