import type { StallDay } from '@/shared/schemas/stallDay';

/** A weather of the whole event: one of a day, or one after the other over several days. */
export interface Scenario {
  readonly name: string;
  readonly chance: number;
  /** What it leaves of what is asked for if all days are dry. */
  readonly factor: number;
}

/** More combinations than this are not told apart. */
const MOST = 64;
const SAME_FACTOR = 1e-9;

/**
 * Weathers of all days together, each day by itself; those that come to the same are one, named by the first. With
 * more than 64 combinations one weather holds for all days.
 *
 * @param day with chances and factors that are known; chances that a rounding keeps from 1 are taken as parts of it
 */
export function scenariosOf({ weathers, days }: Pick<StallDay, 'weathers' | 'days'>): readonly Scenario[] {
  const sum = weathers.reduce((running, { chance }) => running + (chance?.value ?? 0), 0);
  const known = weathers.flatMap(({ name, chance, factor }) =>
    chance === null || factor === null ? [] : [{ name, chance: chance.value / sum, factor: factor.value }],
  );
  if (days.length <= 1 || known.length ** days.length > MOST) return known;
  const all = days.reduce((sum, { weight }) => sum + weight, 0);
  let combined: readonly Scenario[] = [{ name: '', chance: 1, factor: 0 }];
  for (const { weight } of days) {
    combined = combined.flatMap((before) =>
      known.map((weather) => ({
        name: before.name === '' ? weather.name : `${before.name}, ${weather.name}`,
        chance: before.chance * weather.chance,
        factor: before.factor + (weather.factor * weight) / all,
      })),
    );
  }
  return combined.reduce<readonly Scenario[]>(together, []);
}

// Helpers

function together(found: readonly Scenario[], next: Scenario): readonly Scenario[] {
  const same = found.findIndex(({ factor }) => Math.abs(factor - next.factor) < SAME_FACTOR);
  return same < 0
    ? [...found, next]
    : found.map((one, at) => (at === same ? { ...one, chance: one.chance + next.chance } : one));
}
