import type { StallWeather } from '@/shared/schemas/stallDay';

/** Chances are typed in whole percents or tenths of them; a third three times is meant as all. */
const CHANCE_NOISE = 0.0011;

/** @returns what the chances of a day add up to where that is not one; null where it is, or some are still missing */
export function wrongChanceSum(weathers: readonly Pick<StallWeather, 'chance'>[]): number | null {
  if (weathers.length === 0 || weathers.some(({ chance }) => chance === null)) return null;
  const sum = weathers.reduce((running, { chance }) => running + (chance?.value ?? 0), 0);
  return Math.abs(sum - 1) > CHANCE_NOISE ? sum : null;
}
