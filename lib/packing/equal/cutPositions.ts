import { at } from '@/lib/packing/at';

/** Lengths that a row of long and short sides can have; everything else is named by its place in this list. */
export interface CutPositions {
  /** Ticks, rising, 0 first. */
  readonly lengths: readonly number[];
  /** For each length the positions at which a cut can change anything, as places; 0 and the length among them. */
  readonly rasters: readonly (readonly number[])[];
  /** @returns the place of the largest length within so many ticks. */
  largestWithin(ticks: number): number;
  /** At `whole * lengths.length + cut` the place of the largest length that a cut leaves room for. */
  readonly rests: Int32Array;
  /** @returns each cut of a length in two, the first part no longer than the second. */
  halvings(whole: number): readonly (readonly [number, number])[];
}

/** Above this many a sheet holds so many pieces that no cleverer layout shows. */
const MOST_LENGTHS = 250;

/**
 * The finite set of positions at which a layout of equal pieces needs to be cut: conic combinations of the sides
 * (J. Herz, IBM Journal of Research and Development 16, 462-469, 1972), thinned to raster points
 * (J. Terno, R. Lindemann, G. Scheithauer, Zuschnittprobleme und ihre praktische Lösung, 1987).
 *
 * @param most longest length, ticks
 * @returns null where there are more than a search can use
 */
export function cutPositions(
  most: number,
  { long, short }: { readonly long: number; readonly short: number },
): CutPositions | null {
  const longs = Math.floor(most / long);
  if (((longs + 1) * (Math.floor(most / short) + 1)) / 2 > 10 * MOST_LENGTHS) return null;
  const sums = Array.from({ length: longs + 1 }, (_, i) =>
    Array.from({ length: Math.floor((most - i * long) / short) + 1 }, (__, j) => i * long + j * short),
  );
  const lengths = [...new Set(sums.flat())].sort((a, b) => a - b);
  if (lengths.length > MOST_LENGTHS) return null;
  const size = lengths.length;
  const rests = new Int32Array(size ** 2);
  for (let whole = 0; whole < size; whole += 1) rests.set(restsOf(lengths, whole), whole * size);
  const cutsOf = (whole: number) => rests.subarray(whole * size, whole * size + whole + 1);
  const rasters = lengths.map((_, whole) => [...new Set(cutsOf(whole))].sort((a, b) => a - b));
  return {
    lengths,
    rasters,
    rests,
    largestWithin: (ticks) =>
      Math.max(
        0,
        lengths.findLastIndex((length) => length <= ticks),
      ),
    halvings: (whole) =>
      at(rasters, whole)
        .map((cut) => [cut, at(rests, whole * size + cut)] as const)
        .filter(([cut, other]) => cut > 0 && cut <= other),
  };
}

/** For each cut the place of the largest length that the remainder still holds. */
function restsOf(lengths: readonly number[], whole: number): Int32Array {
  const rests = new Int32Array(whole + 1);
  let other = whole;
  for (let cut = 0; cut <= whole; cut += 1) {
    while (at(lengths, other) > at(lengths, whole) - at(lengths, cut)) other -= 1;
    rests[cut] = other;
  }
  return rests;
}
