import type { DayCount, WeatherMinutes } from '@/lib/stall/count/dayCount';
import { openMinutes } from '@/lib/stall/days/openHours';
import { daysInOrder } from '@/lib/stall/sellingDays';
import type { StallPlan } from '@/shared/schemas/stallPapers';
import type { EveningAnswers } from './eveningAnswers';

/** What the weather was. */
export interface DayWeather {
  /** By day and weather, of days of which it is known. */
  readonly parts: readonly WeatherMinutes[];
  /** What it left of a dry day by the plan, the mean over what is known; null where nothing is. */
  readonly factor: number | null;
  /** The one that held longest, day by day; null where it is not known of every day. */
  readonly weatherIds: readonly string[] | null;
}

/** A weather's part of all that came, 0 to 1. */
interface WeatherShare {
  readonly weatherId: string;
  readonly share: number;
}

/** @returns the weather as said in the evening, else as tapped; where the plan knows only one it was that. */
export function dayWeather(
  plan: StallPlan,
  { weatherMinutes }: Pick<DayCount, 'weatherMinutes'>,
  answers: Pick<EveningAnswers, 'weatherId' | 'weatherOfDays'>,
): DayWeather {
  const only = plan.weathers.length === 1 ? plan.weathers[0]?.id : undefined;
  const said = new Map(saidWeathers(plan, answers).map(({ day, weatherId }) => [day, weatherId]));
  const byDay = daysInOrder(plan).map((day) => {
    const whole = only ?? said.get(day.day);
    if (whole !== undefined) return [{ day: day.day, weatherId: whole, minutes: openMinutes(day) }];
    return weatherMinutes.filter((one) => one.day === day.day && isPlanned(plan, one.weatherId));
  });
  const parts = byDay.flat();
  const factors = new Map(plan.weathers.map(({ id, factor }) => [id, factor]));
  const shares = weatherShares(plan, parts);
  return {
    parts,
    factor:
      shares.length === 0
        ? null
        : shares.reduce((sum, { weatherId, share }) => sum + share * (factors.get(weatherId) ?? 0), 0),
    weatherIds: longestWeathers(plan, parts),
  };
}

/** @returns the weather of each day of which one of the plan was said in the evening, in their order. */
export const saidWeathers = (
  plan: Pick<StallPlan, 'days' | 'weathers'>,
  { weatherId: ofAll, weatherOfDays }: Pick<EveningAnswers, 'weatherId' | 'weatherOfDays'>,
): readonly { readonly day: string; readonly weatherId: string }[] =>
  daysInOrder(plan).flatMap(({ day }) => {
    const weatherId = [weatherOfDays[day], ofAll].find((id) => isPlanned(plan, id));
    return weatherId == null ? [] : [{ day, weatherId }];
  });

/** @returns the weather that held longest on each day of a plan, in their order; null where it is not known of every day. */
export function longestWeathers(
  plan: Pick<StallPlan, 'days'>,
  parts: readonly WeatherMinutes[],
): readonly string[] | null {
  const longest = daysInOrder(plan).flatMap(
    ({ day }) =>
      parts.filter((part) => part.day === day).toSorted((one, other) => other.minutes - one.minutes)[0]
        ?.weatherId ?? [],
  );
  return longest.length === plan.days.length ? longest : null;
}

/** @returns how much of all that came, came in each weather: days by their weight in the plan, parts of a day by minutes. */
export function weatherShares(
  { days }: Pick<StallPlan, 'days'>,
  parts: readonly WeatherMinutes[],
): readonly WeatherShare[] {
  const weighed = parts.map((part) => {
    const own = parts.filter(({ day }) => day === part.day);
    const minutes = own.reduce((sum, one) => sum + one.minutes, 0);
    const weight = days.find(({ day }) => day === part.day)?.weight ?? 0;
    return { ...part, weighs: weight * (minutes > 0 ? part.minutes / minutes : 1 / own.length) };
  });
  const all = weighed.reduce((sum, { weighs }) => sum + weighs, 0);
  const shares = new Map<string, number>();
  for (const { weatherId, weighs } of weighed)
    shares.set(weatherId, (shares.get(weatherId) ?? 0) + weighs / all);
  return all > 0 ? [...shares].map(([weatherId, share]) => ({ weatherId, share })) : [];
}

// Helpers

const isPlanned = ({ weathers }: Pick<StallPlan, 'weathers'>, id: string | null | undefined): boolean =>
  weathers.some((one) => one.id === id);
