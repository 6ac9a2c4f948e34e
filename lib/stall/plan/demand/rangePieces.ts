import { openHours } from '@/lib/stall/days/openHours';
import { designKey } from '@/lib/stall/designKey';
import type { StallDay, StallRange } from '@/shared/schemas/stallDay';
import type { PastDay } from './pastDay';
import { designRates, hourlyWhenDry, meanOf, wantedOf } from './pastWanted';

/** What a forecast rests on. */
interface ForecastBasis {
  readonly stallDay: StallDay;
  readonly past: readonly PastDay[];
  /** Of the way of selling. */
  readonly piecesPerTicket: number;
}

/**
 * Pieces asked for over all days if all are dry, range by range.
 *
 * @returns by the id of the range; null where it cannot be told
 */
export function rangePieces(basis: ForecastBasis): ReadonlyMap<string, number | null> {
  const { forecast, ranges } = basis.stallDay;
  const typed = new Map(ranges.map(({ id, pieces }) => [id, pieces]));
  switch (forecast.from) {
    case 'typed':
      return typed;
    case 'visitors': {
      const { visitors, stopShare, buyShare } = forecast;
      if (visitors === null || stopShare === null || buyShare === null) return noneOf(ranges);
      const all = visitors * Math.max(1, basis.stallDay.days.length);
      return inProportion(ranges, all * stopShare.value * buyShare.value * basis.piecesPerTicket);
    }
    case 'pastDays':
      return fromPastDays(basis, forecast.stallDayIds, forecast.footfallRatio);
    default:
      return forecast satisfies never;
  }
}

/**
 * Closed days that a forecast rests on. A day of which nobody said the weather is taken as it was: nothing is added for
 * a rain that nobody noted.
 */
export const daysRestedOn = (past: readonly PastDay[], ids: readonly string[]): readonly PastDay[] =>
  past.filter(
    ({ stallDayId, sellingHours, weather }) =>
      ids.includes(stallDayId) && sellingHours > 0 && (weather === null || weather.factor > 0),
  );

// Helpers

const noneOf = (ranges: readonly StallRange[]) => new Map(ranges.map(({ id }) => [id, null]));

/** A single range takes all, whatever its proportion. */
function inProportion(ranges: readonly StallRange[], pieces: number): ReadonlyMap<string, number | null> {
  const [only] = ranges;
  if (ranges.length === 1 && only !== undefined) return new Map([[only.id, pieces]]);
  const all = ranges.reduce((sum, range) => sum + (range.pieces ?? 0), 0);
  return new Map(
    ranges.map((range) => [
      range.id,
      range.pieces === null || !(all > 0) ? null : (pieces * range.pieces) / all,
    ]),
  );
}

/** Pieces an hour as on a dry day, over the hours of this one; a range no day knew follows its proportion. */
function fromPastDays(
  { stallDay, past }: ForecastBasis,
  ids: readonly string[],
  footfallRatio: number,
): ReadonlyMap<string, number | null> {
  const { ranges } = stallDay;
  const days = daysRestedOn(past, ids);
  if (days.length === 0) return noneOf(ranges);
  const hours = openHours(stallDay) * footfallRatio;
  const seen = ranges.map((range) => {
    const hourly = hourlyOf(ranges, range, days);
    return hourly === null ? null : hourly * hours;
  });
  const typedOfSeen = ranges.reduce(
    (sum, { pieces }, at) => sum + (seen[at] === null ? 0 : (pieces ?? 0)),
    0,
  );
  const allSeen = seen.reduce<number>((sum, pieces) => sum + (pieces ?? 0), 0);
  return new Map(
    ranges.map(({ id, pieces }, at) => [
      id,
      seen[at] ?? (pieces === null || !(typedOfSeen > 0) ? null : (allSeen * pieces) / typedOfSeen),
    ]),
  );
}

/**
 * The mean of the days that knew a range. To a day on which one of its designs was not along that design is added as the
 * other days had it: who wanted it did not buy another one.
 *
 * @returns pieces an hour as on a dry day; null where no day knew the range
 */
function hourlyOf(ranges: readonly StallRange[], range: StallRange, days: readonly PastDay[]): number | null {
  const rates = designRates(ranges, range, days);
  const designs = [...new Set(range.designs.map(designKey))];
  const hourly = days.flatMap((day) => {
    const wanted = wantedOf(ranges, range, day);
    if (wanted.length === 0) return [];
    const along = new Set(wanted.map(designKey));
    const missed = designs.reduce((sum, key) => sum + (along.has(key) ? 0 : (rates.get(key) ?? 0)), 0);
    const pieces = wanted.reduce((sum, one) => sum + one.pieces, 0);
    return [hourlyWhenDry(day, pieces) + missed];
  });
  return hourly.length === 0 ? null : meanOf(hourly);
}
