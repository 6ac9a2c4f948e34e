import type { Formatter } from '@/app/_words/formatter';
import type { WeatherMinutes } from '@/lib/stall/count/dayCount';
import type { StallPlan } from '@/shared/schemas/stallPapers';

/** @param day of several, as it is written; null where there is only one */
export const weatherLabel = (day: string | null): string =>
  day === null ? 'The weather was' : `The weather on ${day} was`;

/** @returns a day that changed, “As tapped: dry 4 h, wet 3 h.” */
export function weatherWas(
  parts: readonly WeatherMinutes[],
  weathers: StallPlan['weathers'],
  { hours }: Pick<Formatter, 'hours'>,
): string {
  const held = parts.map(({ weatherId, minutes }) => {
    const name = weathers.find(({ id }) => id === weatherId)?.name ?? '';
    return `${name} ${hours(minutes / 60)}`;
  });
  return `As tapped: ${held.join(', ')}.`;
}
