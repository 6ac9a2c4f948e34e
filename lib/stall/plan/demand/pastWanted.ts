import { designKey } from '@/lib/stall/designKey';
import type { StallRange } from '@/shared/schemas/stallDay';
import type { PastDay } from './pastDay';

type Wanted = PastDay['wanted'][number];

/**
 * What was asked for of a range on a day before, each piece in one range at most: a design that a range has now counts
 * there, whatever its range was called then; one that no range has any more counts where the name of its range is.
 *
 * @param ranges all of the stall day that is planned; of those that share a design or a name the first has it
 */
export const wantedOf = (
  ranges: readonly StallRange[],
  range: StallRange,
  { wanted }: PastDay,
): readonly Wanted[] => wanted.filter((one) => rangeOf(ranges, one)?.id === range.id);

/**
 * Pieces an hour of each design as on a dry day: the mean of the days on which it was along, for on the others nobody
 * could buy it.
 *
 * @param days with hours and a weather that left something
 * @returns by `designKey`; designs that were on none of the days left out
 */
export function designRates(
  ranges: readonly StallRange[],
  range: StallRange,
  days: readonly PastDay[],
): ReadonlyMap<string, number> {
  const rates = new Map<string, number[]>();
  for (const day of days) {
    for (const [key, pieces] of piecesBy(wantedOf(ranges, range, day), designKey))
      rates.set(key, [...(rates.get(key) ?? []), hourlyWhenDry(day, pieces)]);
  }
  return new Map([...rates].map(([key, all]) => [key, meanOf(all)]));
}

/** @returns pieces of a day as pieces an hour, if it had been dry */
export const hourlyWhenDry = ({ sellingHours, weather }: PastDay, pieces: number): number =>
  pieces / sellingHours / (weather?.factor ?? 1);

/** @param values one at least */
export const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/** @returns pieces of a range asked for on days before, by size. */
export const wantedSizes = (
  ranges: readonly StallRange[],
  range: StallRange,
  past: readonly PastDay[],
): ReadonlyMap<string, number> =>
  piecesBy(
    past.flatMap((day) => wantedOf(ranges, range, day)),
    ({ size }) => size,
  );

/**
 * @param sizes those the range has; what others were asked for is set aside
 * @returns pieces of own days that the mix of sizes of a range is blended with; what was reckoned as lost is no whole number
 */
export function ownPieces(
  ranges: readonly StallRange[],
  range: StallRange,
  past: readonly PastDay[],
  sizes: readonly string[],
): number {
  const wanted = wantedSizes(ranges, range, past);
  return sizes.reduce((sum, size) => sum + (wanted.get(size) ?? 0), 0);
}

// Helpers

/** @returns pieces by what a key says of them. */
function piecesBy(wanted: readonly Wanted[], keyOf: (one: Wanted) => string): ReadonlyMap<string, number> {
  const pieces = new Map<string, number>();
  for (const one of wanted) pieces.set(keyOf(one), (pieces.get(keyOf(one)) ?? 0) + one.pieces);
  return pieces;
}

function rangeOf(ranges: readonly StallRange[], one: Wanted): StallRange | undefined {
  const key = designKey(one);
  return (
    ranges.find(({ designs }) => designs.some((design) => designKey(design) === key)) ??
    ranges.find(({ name }) => sameName(name, one.rangeName))
  );
}

const sameName = (one: string, other: string): boolean =>
  one.trim().toLowerCase() === other.trim().toLowerCase();
