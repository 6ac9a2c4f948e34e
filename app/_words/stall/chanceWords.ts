import type { Formatter } from '@/app/_words/formatter';
import type { learnedFactors } from '@/lib/stall/plan/demand/learnedFactors';
import { offeredFactor } from '@/lib/stall/plan/demand/offeredFactor';
import { wrongChanceSum } from '@/lib/stall/plan/wrongChanceSum';
import type { StallWeather } from '@/shared/schemas/stallDay';

/** @returns what is wrong with the chances of a day; null where they add up, or some are still missing */
export function chanceSumWords(
  weathers: readonly StallWeather[],
  { share }: Pick<Formatter, 'share'>,
): string | null {
  const sum = wrongChanceSum(weathers);
  return sum === null
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
  Math.abs(offeredFactor(learned) - typed) < SAME
    ? null
    : `Take ${share(offeredFactor(learned))} for ${name}, learned on ${count(days, 'day')}`;
