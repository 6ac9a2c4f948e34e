import type { Formatter } from '@/app/_words/formatter';
import type { learnedFactors } from '@/lib/stall/plan/demand/learnedFactors';
import type { StallWeather } from '@/shared/schemas/stallDay';

/** Chances typed as percentages of two decimals add up to this much. */
const CLOSE = 1e-6;

/** @returns what is wrong with the chances of a day; null where they add up, or some are still missing */
export function chanceSumWords(
  weathers: readonly StallWeather[],
  { share }: Pick<Formatter, 'share'>,
): string | null {
  if (weathers.some(({ chance }) => chance === null) || weathers.length === 0) return null;
  const sum = weathers.reduce((all, { chance }) => all + (chance?.value ?? 0), 0);
  return Math.abs(sum - 1) < CLOSE
    ? null
    : `The chances add up to ${share(sum)}, so one day would count for more or less than one. Change them until they make 100 %.`;
}

/** Differences smaller than this are no offer; a share. */
const SAME = 0.005;

/** @returns what days before say of a weather, as the button that takes it says it; null where they say the same */
export const learnedWords = (
  { typed, learned, name, days }: ReturnType<typeof learnedFactors>[number],
  { share, count }: Pick<Formatter, 'share' | 'count'>,
): string | null =>
  Math.abs(learned - typed) < SAME
    ? null
    : `Take ${share(learned)} for ${name}, learned on ${count(days, 'day')}`;
