/** Gives a side its weight as a share of the room, 0 to 1. */
type Measure = (side: number) => number;

/** Of very many different sides only some serve as thresholds: every pair of measures costs a walk over all boxes. */
const MOST_THRESHOLDS = 24;

/**
 * Measures under which sides that fit beside each other still weigh 1 at most together: the length itself, the
 * length with large sides rounded up and small ones left out, and rounding to k + 1 parts.
 *
 * S. Fekete, J. Schepers, "New classes of fast lower bounds for bin packing problems", Mathematical Programming 91,
 * 11-31, 2001: U(ε) and u(k); φ(ε) of the same authors' general framework, 2004.
 *
 * @param room ticks
 * @param sides all different sides, ticks, none above the room
 */
export function dualFeasible(bin: number, sides: readonly number[]): readonly Measure[] {
  const thresholds = spread(
    sides.flatMap((side) => [side, bin - side]).filter((side) => side > 0 && 2 * side <= bin),
  );
  return [
    (side) => side / bin,
    ...[1, 2, 3, 4].map((parts) => rounded(bin, parts)),
    ...thresholds.flatMap((threshold) => [largeWhole(bin, threshold), stepped(bin, threshold)]),
  ];
}

/** u(k): sides that are no exact (k + 1)th part are rounded down to kths. */
const rounded =
  (bin: number, parts: number): Measure =>
  (side) => {
    const share = (parts + 1) * side;
    return share % bin === 0 ? side / bin : Math.floor(share / bin) / parts;
  };

/** U(ε): what leaves less than the threshold free counts as whole, what is smaller than it not at all. */
const largeWhole =
  (bin: number, threshold: number): Measure =>
  (side) => {
    if (side > bin - threshold) return 1;
    return side < threshold ? 0 : side / bin;
  };

/** φ(ε): counts in how many thresholds a side takes away of those that the room holds. */
const stepped =
  (bin: number, threshold: number): Measure =>
  (side) => {
    const whole = Math.floor(bin / threshold);
    if (2 * side > bin) return 1 - Math.floor((bin - side) / threshold) / whole;
    return side < threshold ? 0 : 1 / whole;
  };

function spread(values: readonly number[]): readonly number[] {
  const rising = [...new Set(values)].sort((a, b) => a - b);
  if (rising.length <= MOST_THRESHOLDS) return rising;
  return Array.from(
    { length: MOST_THRESHOLDS },
    (_, index) => rising[Math.floor((index * rising.length) / MOST_THRESHOLDS)] ?? 0,
  );
}
