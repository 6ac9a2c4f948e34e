import { daysInOrder } from '@/lib/stall/sellingDays';
import type { StallDay } from '@/shared/schemas/stallDay';

/** A weather of the whole event: one of a day, or one after the other over several days. */
export interface Scenario {
  /** Of each day, as days follow one another. */
  readonly weatherIds: readonly string[];
  readonly name: string;
  readonly chance: number;
  /** What it leaves of what is asked for if all days are dry. */
  readonly factor: number;
}

/** More combinations than this are not told apart. */
const MOST = 64;

/**
 * Weathers of all days together, each day by itself; orders of the same weathers over days of the same weight are one,
 * named by the first. With more than 64 combinations one weather holds for all days.
 *
 * @param day with chances and factors that are known; chances that a rounding keeps from 1 are taken as parts of it
 */
export function scenariosOf({ weathers, days }: Pick<StallDay, 'weathers' | 'days'>): readonly Scenario[] {
  const sum = weathers.reduce((running, { chance }) => running + (chance?.value ?? 0), 0);
  const known = weathers.flatMap(({ id, name, chance, factor }) =>
    chance === null || factor === null
      ? []
      : [{ weatherIds: [id], name, chance: chance.value / sum, factor: factor.value }],
  );
  if (days.length <= 1) return known;
  if (known.length ** days.length > MOST)
    return known.map((one) => ({ ...one, weatherIds: days.flatMap(() => one.weatherIds) }));
  const all = days.reduce((sum, { weight }) => sum + weight, 0);
  let combined: readonly Scenario[] = [{ weatherIds: [], name: '', chance: 1, factor: 0 }];
  const inOrder = daysInOrder({ days });
  for (const { weight } of inOrder) {
    combined = combined.flatMap((before) =>
      known.map((weather) => ({
        weatherIds: [...before.weatherIds, ...weather.weatherIds],
        name: before.name === '' ? weather.name : `${before.name}, ${weather.name}`,
        chance: before.chance * weather.chance,
        factor: before.factor + (weather.factor * weight) / all,
      })),
    );
  }
  const same = new Map<string, Scenario>();
  for (const next of combined) {
    const key = weathersKey(next.weatherIds, inOrder);
    const before = same.get(key);
    same.set(key, before === undefined ? next : { ...before, chance: before.chance + next.chance });
  }
  return [...same.values()];
}

/** @returns what orders of the same weathers have in common where their days weigh the same. */
export const weathersKey = (
  weatherIds: readonly string[],
  days: readonly Pick<StallDay['days'][number], 'weight'>[],
): string =>
  weatherIds
    .map((id, at) => `${days[at]?.weight ?? 0} ${id}`)
    .sort()
    .join('\n');
