import type { PastDay } from '@/lib/stall/evening/pastDay';
import type { StallWeather } from '@/shared/schemas/stallDay';

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
 * What each weather left of the pieces that its plan expected of a dry day: the mean of its days and of the planned
 * factor. The weather that others are measured by, of factor 1, is not measured.
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
    const left = past.flatMap((day) => leftOfDryDay(day, name) ?? []);
    if (left.length === 0) return [];
    const sum = left.reduce((running, share) => running + share, 0);
    const learned = (PRIOR_DAYS * factor.value + sum) / (PRIOR_DAYS + left.length);
    return [{ weatherId: id, name, typed: factor.value, learned, days: left.length }];
  });

// Helpers

/** @returns null for a day of another weather, or one of which nothing was expected. */
function leftOfDryDay({ weather, expected, wanted }: PastDay, name: string): number | null {
  if (weather === null || !isNamed(weather.name, name) || expected === null) return null;
  const onDryDay = expected / weather.factor;
  const pieces = wanted.reduce((sum, one) => sum + one.pieces, 0);
  return Number.isFinite(onDryDay) && onDryDay > 0 ? pieces / onDryDay : null;
}

const isNamed = (one: string, other: string): boolean =>
  one.trim().toLowerCase() === other.trim().toLowerCase();
