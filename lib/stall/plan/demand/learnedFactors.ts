import type { StallWeather } from '@/shared/schemas/stallDay';
import type { PastDay } from './pastDay';

/** What days that were closed say of a weather; an offer, which nothing takes by itself. */
interface LearnedFactor {
  readonly weatherId: string;
  readonly name: string;
  /** What it leaves of a dry day, as planned, and as it has shown. */
  readonly typed: number;
  readonly learned: number;
  /** On how many days that rests. */
  readonly days: number;
}

/** The planned factor counts like so many days. Chosen for this product: a fair or two must not turn a plan over. */
const PRIOR_DAYS = 2;

/**
 * What each weather left of the pieces that its plan expected of a dry day: the mean of its days, a part of a day as
 * that part, and of the planned factor. Of a day of several weathers the others are taken off as its plan had them. The
 * weather that others are measured by, of factor 1, is not measured.
 *
 * @param weathers of the day that is planned; a past day has a weather by its name
 * @returns weathers of which there is a day, in their order
 */
export const learnedFactors = (
  weathers: readonly StallWeather[],
  past: readonly PastDay[],
): readonly LearnedFactor[] =>
  weathers.flatMap(({ id, name, factor }) => {
    if (factor === null || factor.value === 1) return [];
    const seen = past.flatMap((day) => seenOf(day, name) ?? []);
    if (seen.length === 0) return [];
    const left = seen.reduce((sum, one) => sum + one.left, PRIOR_DAYS * factor.value);
    const days = seen.reduce((sum, { share }) => sum + share, PRIOR_DAYS);
    return [{ weatherId: id, name, typed: factor.value, learned: left / days, days: seen.length }];
  });

// Helpers

/**
 * @returns the part of a day that had a weather, and what was left of a dry day in it; null for a day of other weathers,
 * or one of which nothing was expected
 */
function seenOf({ weather, expected, wanted }: PastDay, name: string) {
  if (weather === null || expected === null) return null;
  const own = weather.parts.filter((part) => isNamed(part.name, name));
  const share = own.reduce((sum, part) => sum + part.share, 0);
  const onDryDay = expected / weather.factor;
  if (!(share > 0) || !Number.isFinite(onDryDay) || onDryDay <= 0) return null;
  const pieces = wanted.reduce((sum, one) => sum + one.pieces, 0);
  const inOthers = weather.parts
    .filter((part) => !own.includes(part))
    .reduce((sum, part) => sum + part.share * part.factor, 0);
  return { share, left: Math.max(0, pieces / onDryDay - inOthers) };
}

const isNamed = (one: string, other: string): boolean =>
  one.trim().toLowerCase() === other.trim().toLowerCase();
