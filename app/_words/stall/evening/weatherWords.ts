import { hoursWords } from '@/app/_words/minutesWords';
import type { WeatherMinutes } from '@/lib/stall/count/dayCount';
import type { StallPlan } from '@/shared/schemas/stallPapers';

/** @param day of several, as it is written; null where there is only one */
export const weatherLabel = (day: string | null): string =>
  day === null ? 'The weather was' : `The weather on ${day} was`;

/** @returns a day that changed, “As tapped: dry 4 h, wet 3 h.” */
export function weatherWas(
  parts: readonly WeatherMinutes[],
  weathers: StallPlan['weathers'],
  locale: string,
): string {
  const held = parts.map(({ weatherId, minutes }) => {
    const name = weathers.find(({ id }) => id === weatherId)?.name ?? '';
    return `${name} ${hoursWords(minutes / 60, locale)}`;
  });
  return `As tapped: ${held.join(', ')}.`;
}
