/** One thing that is sold in a fixed mix with others, money a piece without tax. */
export interface Sold {
  /** Pieces of it in one set of the mix, above 0. */
  readonly perSet: number;
  readonly price: number;
  /** What one more piece costs, fees included. */
  readonly variable: number;
}

export interface Contribution {
  /** What a set of the mix brings, costs and leaves towards the fixed costs. */
  readonly setPrice: number;
  readonly setVariable: number;
  readonly setLeaves: number;
  /** What is left as a share of the price. */
  readonly ratio: number;
}

/** @returns what one set of a mix leaves towards the fixed costs; of a single thing, what one piece leaves. */
export function contribution(mix: readonly Sold[]): Contribution {
  const setPrice = mix.reduce((sum, { perSet, price }) => sum + perSet * price, 0);
  const setVariable = mix.reduce((sum, { perSet, variable }) => sum + perSet * variable, 0);
  const setLeaves = setPrice - setVariable;
  return { setPrice, setVariable, setLeaves, ratio: setLeaves / setPrice };
}

/**
 * @param fixed what has to be paid whatever is sold
 * @param profit wanted on top, before tax on income; 0 for the break-even
 * @returns sets of the mix to sell, in fractions; null where a set leaves nothing
 */
export function setsToSell({ setLeaves }: Contribution, fixed: number, profit = 0): number | null {
  return setLeaves > 0 ? (fixed + profit) / setLeaves : null;
}

/** @returns profit before tax on income that leaves a wanted one after it; `incomeTax` below 1. */
export const profitBeforeTax = (after: number, incomeTax: number): number => after / (1 - incomeTax);

export interface Safety {
  /** Sales that may be lost before money is, and the same as a share of sales. */
  readonly margin: number;
  readonly share: number;
  /** By how many percent profit moves when sales move by one; null at the break-even, where it has no bound. */
  readonly leverage: number | null;
}

/**
 * How far sales lie above the break-even.
 *
 * @param sets sets of the mix that are sold
 * @returns null where a set leaves nothing, or nothing is sold
 */
export function safety(mix: Contribution, fixed: number, sets: number): Safety | null {
  const needed = setsToSell(mix, fixed);
  if (needed === null || !(sets > 0)) return null;
  const profit = mix.setLeaves * sets - fixed;
  return {
    margin: (sets - needed) * mix.setPrice,
    share: (sets - needed) / sets,
    leverage: profit === 0 ? null : (mix.setLeaves * sets) / profit,
  };
}
