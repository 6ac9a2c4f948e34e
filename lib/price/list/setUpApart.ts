import type { TargetOfOrder } from './orderTargets';

interface SetUpQuestion {
  /** What a piece must bring in an order of n, currency units as the channel writes prices. */
  readonly need: TargetOfOrder;
  /** The least order. */
  readonly from: number;
  readonly judgedTo: number;
  /** Every order up to this one must reach its target. */
  readonly coveredTo: number;
  /** Lifts an amount to the maker's ending, whole minor units; and what they are in currency units. */
  readonly lifted: (amount: number) => number;
  readonly step: number;
  readonly unit: number;
}

/** Orders that “so much to start, so much a piece” is fitted over: about what one workshop is asked for. */
const FITTED_TO = 100;
/** Prices a piece above the fitted one that are tried. */
const TRIED = 4;

/**
 * “So much to start, so much a piece”, both on the maker's ending: the piece at the slope of what orders must bring, or
 * a few endings above it, the start at the least with which every order reaches its target; of these the pair under
 * which the dearest order pays least over its own sum. A line through the middle of the totals would leave half of all
 * orders short.
 *
 * @returns whole minor units
 */
export function setUpApart({ need, from, judgedTo, coveredTo, lifted, step, unit }: SetUpQuestion): {
  readonly start: number;
  readonly each: number;
} {
  const total = (n: number) => need(n) * n;
  const slope = Math.max(0, slopeOf(total));
  const tried = Array.from({ length: TRIED }, (_, more) => {
    const each = lifted(slope + more * step);
    let missing = 0;
    for (let n = from; n <= coveredTo; n += 1) missing = Math.max(missing, total(n) - n * each * unit);
    const start = lifted(missing);
    let worst = 0;
    for (let n = from; n <= judgedTo; n += 1)
      worst = Math.max(worst, ((start + n * each) * unit) / total(n) - 1);
    return { start, each, worst };
  });
  const [first = { start: 0, each: 0, worst: 0 }, ...others] = tried;
  const best = others.reduce((least, next) => (next.worst < least.worst - 1e-12 ? next : least), first);
  return { start: best.start, each: best.each };
}

/** Slope of the straight line through the totals with the least sum of squared gaps. */
function slopeOf(total: (n: number) => number): number {
  const middle = (FITTED_TO + 1) / 2;
  let [across, along] = [0, 0];
  for (let n = 1; n <= FITTED_TO; n += 1) {
    across += (n - middle) * total(n);
    along += (n - middle) ** 2;
  }
  return across / along;
}
