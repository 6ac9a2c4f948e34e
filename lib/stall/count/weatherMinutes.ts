import { openMinutes } from '@/lib/stall/days/openHours';
import { daysInOrder } from '@/lib/stall/sellingDays';
import type { StallPlan } from '@/shared/schemas/stallPapers';
import type { WeatherMinutes } from './dayCount';
import { sellingTime, type WallClock } from './sellingTime';
import type { TappedEntry } from './tappedEntry';

/**
 * How long each weather held while the stall was open, day by day: from the tap that told it to the next, the first one
 * from the opening on. Of a day on which nobody told a weather nothing is known.
 *
 * @param taps as they follow one another
 */
export function weatherMinutes(
  plan: StallPlan,
  taps: readonly TappedEntry[],
  wallAt: WallClock,
): readonly WeatherMinutes[] {
  const told = taps.flatMap(({ at, body: { tap } }) =>
    tap.what === 'weather' ? [{ weatherId: tap.weatherId, ...sellingTime(plan, wallAt(at)) }] : [],
  );
  return daysInOrder(plan).flatMap((day) => {
    // Taps of a fair of one day are of that day, whatever a wrong clock says.
    const own = told.filter((one) => plan.days.length === 1 || one.day === day.day);
    const minutes = new Map<string, number>();
    for (const [at, { weatherId }] of own.entries()) {
      const next = own[at + 1];
      const from = at === 0 ? 0 : openFor(day, own[at]?.minute ?? 0);
      const until = next === undefined ? openMinutes(day) : openFor(day, next.minute);
      minutes.set(weatherId, (minutes.get(weatherId) ?? 0) + Math.max(0, until - from));
    }
    return [...minutes]
      .filter(([, held]) => held > 0)
      .map(([weatherId, held]) => ({ day: day.day, weatherId, minutes: held }));
  });
}

// Helpers

/** Minutes for which a day was open at a minute since its midnight. */
const openFor = (day: StallPlan['days'][number], minute: number): number =>
  Math.min(Math.max(0, minute - day.fromMinute), openMinutes(day));
