import { lossUnsold } from '@/lib/stall/lossUnsold';
import type { StallSpread } from '@/lib/stall/plan/stallPlanned';
import { outcomeOf, type PlanSeen } from './planOutcomes';
import { drawsFrom, seedOf } from './seededDraws';

const DAYS = 20_000;
const FEWEST_DAYS = 2000;
/** Draws of single goods in all; beyond it fewer days are drawn, so that a large plan does not make anybody wait. */
const MOST_DRAWS = 1_200_000;

/** Parts of 0 to 1 for which a table knows where to begin; powers of two, so that a draw falls into its part exactly. */
const FEWEST_PARTS = 64;
const MOST_PARTS = 4096;

/** What selling so many of some goods adds to the profit, by a table of chances. */
interface Table {
  /** Sold in any case. */
  readonly least: number;
  /** Chance that no more than so many beyond those are sold. */
  readonly upTo: Float64Array;
  /** The fewest beyond those that a draw of this part of 0 to 1 can give. */
  readonly from: Uint32Array;
  readonly each: number;
}

/**
 * How far days of one plan lie apart. Days are drawn, each weather as often as its chance says, and what is asked for of
 * each goods by itself; shares of cards and pieces on a ticket stay at their means. The seed comes from the figures.
 */
export function planSpread(seen: PlanSeen): StallSpread {
  const { goods, bring, scenarios } = seen;
  const seed = seedOf([
    ...scenarios.flatMap(({ chance, factor }) => (chance > 0 ? [chance, factor] : [])),
    ...goods.flatMap(({ expected, contribution }, at) => [bring[at] ?? 0, expected, contribution]),
  ]);
  const draw = drawsFrom(seed);
  const unsold = outcomeOf(
    seen,
    goods.map(() => ({ all: 0, fromHome: 0 })),
  ).profit;
  const tables = scenarios.map((_, at) => tablesOf(seen, at));
  const days = Math.max(FEWEST_DAYS, Math.min(DAYS, Math.floor(MOST_DRAWS / Math.max(1, goods.length))));
  const profits = new Float64Array(days);
  let weather = 0;
  let reached = scenarios[0]?.chance ?? 1;
  for (let day = 0; day < days; day += 1) {
    while ((day + 0.5) / days >= reached && weather < scenarios.length - 1) {
      weather += 1;
      reached += scenarios[weather]?.chance ?? 0;
    }
    let profit = unsold;
    for (const table of tables[weather] ?? []) profit += table.each * drawn(table, draw());
    profits[day] = profit;
  }
  return { ...measured(profits), days, seed };
}

// Helpers

function tablesOf({ goods, bring }: PlanSeen, scenario: number): readonly Table[] {
  return goods.flatMap((one, at) => {
    const { demands, contribution } = one;
    const brought = bring[at] ?? 0;
    const demand = demands[scenario];
    if (brought === 0 || demand === undefined) return [];
    const least = Math.min(brought, demand.least);
    const upTo = Float64Array.from({ length: Math.min(brought, demand.most) - least }, (_, beyond) =>
      demand.chanceUpTo(least + beyond),
    );
    return [{ least, upTo, from: beginnings(upTo), each: contribution + lossUnsold(one) }];
  });
}

/** @returns for each part the first count whose chance is beyond where the part begins */
function beginnings(upTo: Float64Array): Uint32Array {
  let parts = FEWEST_PARTS;
  while (parts < upTo.length && parts < MOST_PARTS) parts *= 2;
  let count = 0;
  return Uint32Array.from({ length: parts }, (_, part) => {
    while (count < upTo.length && (upTo[count] ?? 1) <= part / parts) count += 1;
    return count;
  });
}

/** Begun where the part of the draw begins: a draw costs a step or two and not a search. */
function drawn({ least, upTo, from }: Table, at: number): number {
  let count = from[Math.floor(at * from.length)] ?? 0;
  while ((upTo[count] ?? 1) <= at) count += 1;
  return least + count;
}

function measured(profits: Float64Array): Pick<StallSpread, 'sd' | 'lossChance' | 'p10' | 'p50' | 'p90'> {
  const count = profits.length;
  const mean = profits.reduce((sum, profit) => sum + profit, 0) / count;
  const squares = profits.reduce((sum, profit) => sum + (profit - mean) ** 2, 0);
  const sorted = profits.slice().sort();
  const at = (share: number) => sorted[Math.min(count - 1, Math.floor(share * count))] ?? 0;
  return {
    sd: Math.sqrt(squares / (count - 1)),
    lossChance: profits.reduce((sum, profit) => sum + (profit < 0 ? 1 : 0), 0) / count,
    p10: at(0.1),
    p50: at(0.5),
    p90: at(0.9),
  };
}
