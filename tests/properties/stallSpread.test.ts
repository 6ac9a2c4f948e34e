import { describe, expect, it } from 'vitest';
import type { GoodsPlanned, StallPlanned } from '@/lib/stall/plan/stallPlanned';
import { fairAsked, fairWith, plannedFair } from '@/tests/fixtures/fairAsked';

/*
 * Days that were drawn against the exact distribution of the same days: for each weather the chances of every goods,
 * convolved one after the other on a grid of cents. Figures of the goods are those of the plan; chances, sums and
 * quantiles are made here.
 */
const STEP = 0.01;

interface Exact {
  readonly mean: number;
  readonly sd: number;
  readonly lossChance: number;
  readonly quantile: (share: number) => number;
  /**
   * Variance within the weathers of what is told of a day: each weather is drawn as often as its chance says, so that
   * only days of one weather differ by the draw.
   */
  readonly varianceOf: (of: (profit: number) => number) => number;
  /** Chance a unit of money around a quantile, for its standard error. */
  readonly density: (share: number) => number;
}

function chancesSold(mean: number, brought: number): readonly number[] {
  const chances: number[] = [];
  let reached = 0;
  for (let count = 0, chance = Math.exp(-mean); count < brought; count += 1, chance *= mean / count) {
    chances.push(chance);
    reached += chance;
  }
  return [...chances, Math.max(0, 1 - reached)];
}

function exactOf(plan: StallPlanned, goods: readonly GoodsPlanned[]): Exact {
  const bring = new Map(plan.bring.map((one) => [JSON.stringify([one.lineId, one.size]), one.bring]));
  const kinds = goods.map((one) => ({
    expected: one.expected,
    brought: bring.get(JSON.stringify([one.lineId, one.size])) ?? 0,
    // A piece sold brings its net price, pays fees and packaging, and keeps 60 % of its cost from being all there is.
    each: one.netPrice - one.fees - one.packaging - one.leftoverShare * one.cost,
    stays: (1 - one.leftoverShare) * one.cost,
  }));
  const [{ fixed } = { fixed: 0 }] = plan.outcomes;
  const unsold = -fixed - kinds.reduce((sum, { brought, stays }) => sum + brought * stays, 0);
  const mixed = new Map<number, number>();
  const weathers: { chance: number; reached: Float64Array }[] = [];
  for (const { chance, factor } of plan.outcomes) {
    let reached: Float64Array = Float64Array.of(1);
    for (const { expected, brought, each } of kinds) {
      const step = Math.round(each / STEP);
      const next = new Float64Array(reached.length + step * brought);
      for (const [sold, part] of chancesSold(expected * factor, brought).entries())
        for (let at = 0; at < reached.length; at += 1)
          next[at + sold * step] = (next[at + sold * step] ?? 0) + part * (reached[at] ?? 0);
      reached = next;
    }
    weathers.push({ chance, reached });
    for (const [at, part] of reached.entries()) mixed.set(at, (mixed.get(at) ?? 0) + chance * part);
  }
  const days = [...mixed]
    .sort(([a], [b]) => a - b)
    .map(([at, chance]) => ({ profit: unsold + at * STEP, chance }));
  const sum = (of: (profit: number) => number) =>
    days.reduce((running, { profit, chance }) => running + chance * of(profit), 0);
  const mean = sum((profit) => profit);
  const quantile = (share: number) => {
    let reached = 0;
    for (const { profit, chance } of days) {
      reached += chance;
      if (reached >= share) return profit;
    }
    return Number.NaN;
  };
  const varianceOf = (of: (profit: number) => number) =>
    weathers.reduce((running, { chance, reached }) => {
      const meanOf = (power: number) =>
        reached.reduce((total, part, at) => total + part * of(unsold + at * STEP) ** power, 0);
      return running + chance * (meanOf(2) - meanOf(1) ** 2);
    }, 0);
  const upTo = (profit: number) => sum((one) => (one <= profit ? 1 : 0));
  return {
    mean,
    sd: Math.sqrt(sum((profit) => (profit - mean) ** 2)),
    lossChance: sum((profit) => (profit < 0 ? 1 : 0)),
    quantile,
    varianceOf,
    density: (share) => (upTo(quantile(share) + 20) - upTo(quantile(share) - 20)) / 40,
  };
}

const mugsHeld = fairAsked.stallDay.held.filter(({ jobId }) => jobId === 'fair-mugs');
const gut = plannedFair();
const advised = plannedFair(fairWith({ held: mugsHeld }));

describe.each([
  ['96 shirts and 36 mugs', gut, { sd: 338, loss: 0.16, points: [-200, 436, 693] }],
  ['81 shirts and 36 mugs', advised, { sd: 319, loss: 0.138, points: null }],
])('the spread of %s', (_, plan, worked) => {
  const exact = exactOf(plan.mine, plan.goods);
  const { spread, weighted } = plan.mine;

  it('is that of the worked example, by the exact distribution', () => {
    expect(Math.round(exact.sd)).toBe(worked.sd);
    expect(exact.lossChance.toFixed(3)).toBe(worked.loss.toFixed(3));
    // What a piece brings lies within half a step of its place on the grid.
    expect(Math.abs(exact.mean - weighted.profit)).toBeLessThan((weighted.sold * STEP) / 2);
    if (worked.points !== null)
      expect([0.1, 0.5, 0.9].map((share) => Math.round(exact.quantile(share)))).toEqual(worked.points);
  });

  it('is within three standard errors of it as drawn', () => {
    const { lossChance, mean, sd } = exact;
    const errorOf = (of: (profit: number) => number) => Math.sqrt(exact.varianceOf(of) / spread.days);
    expect(Math.abs(spread.lossChance - lossChance)).toBeLessThan(
      3 * errorOf((profit) => (profit < 0 ? 1 : 0)),
    );
    // That of the variance, by the slope of the root.
    expect(Math.abs(spread.sd - sd)).toBeLessThan((3 * errorOf((profit) => (profit - mean) ** 2)) / (2 * sd));
    for (const [share, drawn] of [
      [0.1, spread.p10],
      [0.5, spread.p50],
      [0.9, spread.p90],
    ] as const) {
      const reached = exact.quantile(share);
      const error = errorOf((profit) => (profit <= reached ? 1 : 0)) / exact.density(share);
      expect(Math.abs(drawn - reached)).toBeLessThan(3 * error);
    }
  });
});

describe('drawn days', () => {
  it('are the same for the same figures, and others for other figures', () => {
    expect(plannedFair().mine.spread).toEqual(gut.mine.spread);
    expect(advised.mine.spread.seed).not.toBe(gut.mine.spread.seed);
  });
});
