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

/** More of them than this are not told apart. */
const MOST = 64;

type Days = Pick<StallDay, 'weathers' | 'days'>;

/**
 * Weathers of all days together, each day by itself; orders of the same weathers over days of the same weight are one,
 * named by the first. With more than 64 that differ one weather holds for all days (`holdsOneWeather`).
 *
 * @param day with chances and factors that are known; chances that a rounding keeps from 1 are taken as parts of it
 */
export function scenariosOf(day: Days): readonly Scenario[] {
  const known = knownWeathers(day);
  const oneForAll = () =>
    known.map((one) => ({ ...one, weatherIds: day.days.flatMap(() => one.weatherIds) }));
  return day.days.length <= 1 ? known : (eachDay(day, known) ?? oneForAll());
}

/** @returns whether one weather is taken for several days, for theirs in every order would be too many. */
export const holdsOneWeather = (day: Days): boolean =>
  day.days.length > 1 && eachDay(day, knownWeathers(day)) === null;

/** @returns what orders of the same weathers have in common where their days weigh the same. */
export const weathersKey = (
  weatherIds: readonly string[],
  days: readonly Pick<StallDay['days'][number], 'weight'>[],
): string =>
  weatherIds
    .map((id, at) => `${days[at]?.weight ?? 0} ${id}`)
    .sort()
    .join('\n');

// Helpers

/** Each with its part of all chances. */
function knownWeathers({ weathers }: Days): readonly Scenario[] {
  const sum = weathers.reduce((running, { chance }) => running + (chance?.value ?? 0), 0);
  return weathers.flatMap(({ id, name, chance, factor }) =>
    chance === null || factor === null
      ? []
      : [{ weatherIds: [id], name, chance: chance.value / sum, factor: factor.value }],
  );
}

/** @returns weathers day after day; null where more than 64 differ */
function eachDay({ days }: Days, known: readonly Scenario[]): readonly Scenario[] | null {
  const all = days.reduce((sum, { weight }) => sum + weight, 0);
  let combined: readonly Scenario[] = [{ weatherIds: [], name: '', chance: 1, factor: 0 }];
  const inOrder = daysInOrder({ days });
  for (const { weight } of inOrder) {
    const next = combined.flatMap((before) =>
      known.map((weather) => ({
        weatherIds: [...before.weatherIds, ...weather.weatherIds],
        name: before.name === '' ? weather.name : `${before.name}, ${weather.name}`,
        chance: before.chance * weather.chance,
        factor: before.factor + (weather.factor * weight) / all,
      })),
    );
    combined = onceEach(next, inOrder);
    // Further days make no fewer.
    if (combined.length > MOST) return null;
  }
  return combined;
}

/** Orders of the same weathers as one, with the chances of all. */
function onceEach(
  scenarios: readonly Scenario[],
  inOrder: readonly StallDay['days'][number][],
): readonly Scenario[] {
  const same = new Map<string, Scenario>();
  for (const next of scenarios) {
    const key = weathersKey(next.weatherIds, inOrder);
    const before = same.get(key);
    same.set(key, before === undefined ? next : { ...before, chance: before.chance + next.chance });
  }
  return [...same.values()];
}
