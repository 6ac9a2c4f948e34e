import { describe, expect, it } from 'vitest';
import { fewerOfRange, sayFewer } from '@/lib/stall/plan/advice/sayFewer';
import { bringGrid } from '@/lib/stall/plan/bringGrid';
import { holdNumbers } from '@/lib/stall/plan/holdNumbers';
import type { GoodsPlanned, StallOutcome } from '@/lib/stall/plan/stallPlanned';
import type { StallRange } from '@/shared/schemas/stallDay';

const goods = (rangeId: string, lineId: string, size: string, advised: number): GoodsPlanned => ({
  ...{ rangeId, jobId: 'job', lineId, size, design: lineId, advised },
  ...{ price: 28, netPrice: 26, fees: 0.6, packaging: 0.2, cost: 6, costWithOverhead: 7, leftoverShare: 0.6 },
  ...{
    expected: 5,
    criticalRatio: 0.87,
    atHome: 0,
    finishedBefore: 0,
    mine: advised,
    isHeld: false,
    sold: 4,
    advisedBy: 'rule',
  },
});
const range = (id: string, isSized: boolean): StallRange => ({
  ...{ id, name: id, pieces: 10, designs: [] },
  sizes: isSized ? { from: 'audience', audience: 'adults' } : null,
});
const planned = [
  goods('shirts', 'fern', 'M', 6),
  goods('shirts', 'fern', 'L', 7),
  goods('shirts', 'otter', 'M', 5),
  goods('shirts', 'otter', 'L', 6),
  goods('mugs', 'fern-mug', '', 11),
];

describe('what is brought, laid out', () => {
  const held = [{ jobId: 'job', lineId: 'fern', size: 'L', bring: 9 }];
  const [shirts, mugs] = bringGrid({ ranges: [range('shirts', true), range('mugs', false)], held }, planned);

  it('has a row a design, with the number that is held beside the advice', () => {
    expect(shirts?.sizes).toEqual(['M', 'L']);
    expect(shirts?.rows.map(({ design, mine, advised }) => [design, mine, advised])).toEqual([
      // 6 as advised and the 9 that are held; 5 + 6.
      ['fern', 15, 13],
      ['otter', 11, 11],
    ]);
    expect(shirts?.rows[0]?.cells.map((cell) => cell.held)).toEqual([null, 9]);
  });

  it('adds up by size and in all', () => {
    expect(shirts?.bySize).toEqual([
      { size: 'M', mine: 11, advised: 11 },
      { size: 'L', mine: 15, advised: 13 },
    ]);
    expect([shirts?.mine, shirts?.advised]).toEqual([26, 24]);
  });

  it('has no sizes for goods of one size, and no range of which nothing is planned', () => {
    expect(mugs?.sizes).toEqual([]);
    expect(bringGrid({ ranges: [range('bags', false)], held: [] }, planned)).toEqual([]);
  });
});

describe('numbers that are held', () => {
  const of = (lineId: string, bring: number) => ({ jobId: 'job', lineId, size: 'M', bring });
  it('are changed in their place, added and let go', () => {
    const before = [of('fern', 8), of('otter', 6)];
    const after = holdNumbers(before, [of('otter', 0), of('fox', 3), { ...of('fern', 0), bring: null }]);
    expect(after).toEqual([of('otter', 0), of('fox', 3)]);
  });
});

describe('fewer pieces', () => {
  const outcome = (weather: string, factor: number, profit: number): StallOutcome => ({
    ...{
      weather,
      weatherIds: [weather],
      factor,
      profit,
      chance: 0.5,
      sold: 10,
      takings: 0,
      netRevenue: 0,
      fees: 0,
    },
    ...{ contribution: 0, fixed: 0, leftoverCost: 0, leftovers: 0, payPerHour: null },
  });
  const plan = (pieces: number, dry: number, wet: number) => ({
    pieces,
    outcomes: [outcome('wet', 0.3, wet), outcome('dry', 1, dry)],
  });
  const mine = plan(96, 543.25, -391);

  it('are told where they give up nothing when it is dry and lose less when it is wet', () => {
    expect(sayFewer(mine, plan(81, 545.13, -347))).toEqual({
      fewer: 15,
      best: { weather: 'dry', weatherIds: ['dry'], profit: 'same' },
      worst: { weather: 'wet', weatherIds: ['wet'], better: 44 },
    });
    expect(sayFewer(mine, plan(81, 560, -347))?.best.profit).toBe('more');
  });

  it.each([
    ['that earn 6 less than 543.25 when it is dry', plan(81, 537, -347)],
    ['that lose as much when it is wet', plan(81, 545, -391)],
    ['that are not fewer', plan(96, 545, -347)],
  ])('are not told %s', (_, advice) => {
    expect(sayFewer(mine, advice)).toBeNull();
  });

  it('are told within a hundredth of a large profit', () => {
    expect(sayFewer(plan(96, 2000, -391), plan(81, 1980, -347))).not.toBeNull();
    expect(sayFewer(plan(96, 2000, -391), plan(81, 1979, -347))).toBeNull();
  });

  it('are not told of one weather alone', () => {
    const one = (pieces: number, profit: number) => ({ pieces, outcomes: [outcome('roof', 1, profit)] });
    expect(sayFewer(one(96, 500), one(81, 510))).toBeNull();
  });

  it('are told of weathers that can be, not of one without a chance', () => {
    const never = (name: string, factor: number, profit: number) => ({
      ...outcome(name, factor, profit),
      chance: 0,
    });
    const planOf = (pieces: number, showers: number, wet: number, festival: number) => ({
      pieces,
      outcomes: [
        outcome('dry', 1, 540),
        outcome('showers', 0.6, showers),
        never('wet', 0.3, wet),
        never('festival', 2, festival),
      ],
    });
    // When it is wet fewer lose more, and a festival would have sold them all.
    expect(sayFewer(planOf(96, 90, -391, 900), planOf(81, 120, -400, 500))).toMatchObject({
      best: { weather: 'dry', profit: 'same' },
      worst: { weather: 'showers', better: 30 },
    });
  });

  it('are held against the same weather, not against another one of its name', () => {
    const named = (id: string, factor: number, profit: number) => ({
      ...outcome('wet', factor, profit),
      weatherIds: [id],
    });
    const both = (pieces: number, drizzle: number, storm: number) => ({
      pieces,
      outcomes: [outcome('dry', 1, 540), named('drizzle', 0.5, drizzle), named('storm', 0.1, storm)],
    });
    expect(sayFewer(both(96, -50, -391), both(81, -20, -347))?.worst).toEqual({
      ...{ weather: 'wet', weatherIds: ['storm'] },
      better: 44,
    });
  });

  it('are told of the range that has the most of them', () => {
    const taking = [
      { rangeId: 'mugs', weightedProfit: 0, ...plan(88, 544, -375) },
      { rangeId: 'shirts', weightedProfit: 0, ...plan(81, 545, -347) },
    ];
    // Only pieces and outcomes are looked at.
    expect(fewerOfRange({ mine: mine as never, taking })?.rangeId).toBe('shirts');
  });
});
