import { describe, expect, it } from 'vitest';
import { openHours } from '@/lib/stall/days/openHours';
import { designShares } from '@/lib/stall/plan/demand/designShares';
import { learnedFactors } from '@/lib/stall/plan/demand/learnedFactors';
import type { PastDay } from '@/lib/stall/plan/demand/pastDay';
import { ownPieces } from '@/lib/stall/plan/demand/pastWanted';
import { rangePieces } from '@/lib/stall/plan/demand/rangePieces';
import { holdsOneWeather, scenariosOf } from '@/lib/stall/plan/demand/scenarios';
import { sizeShares } from '@/lib/stall/plan/demand/sizeShares';
import { addDays } from '@/shared/days';
import type { StallDay } from '@/shared/schemas/stallDay';
import { stallSizeCurves } from '@/shared/tables/sizeCurves';
import { fairAsked, fairWith, plannedFair } from '@/tests/fixtures/fairAsked';
import { fixedRate } from '@/tests/fixtures/numbers';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

const { stallDay } = fairAsked;
const [fairDay] = stallDay.days;
if (fairDay === undefined) throw new Error('the fair has no day');

const share = (value: number) => fixedRate(value, 'share');
const shirt = (lineId: string, size: string, pieces: number) => ({
  ...{ jobId: 'fair-shirts', lineId, size, pieces, sold: pieces, rangeName: 'Shirts' },
});

/** What a day was like: names, factors and shares of its weathers. */
const of = (...parts: readonly (readonly [string, number, number])[]): PastDay['weather'] => ({
  factor: parts.reduce((sum, [, factor, part]) => sum + factor * part, 0),
  parts: parts.map(([name, factor, part]) => ({ name, factor, share: part })),
});

/** Six hours of a dry day on which 30 shirts were asked for. */
const dryDay: PastDay = {
  ...{ stallDayId: 'autumn', name: 'Autumn fair', day: TEST_DAY, sellingHours: 6, payPerHour: 20 },
  ...{ takings: 900, stallFee: 60, currency: 'USD', weather: of(['dry', 1, 1]), expected: 40 },
  wanted: [shirt('fern', 'M', 12), shirt('fern', 'L', 6), shirt('otter', 'L', 12)],
};
/** Four hours in the rain, of which the plan left 0.3: 6 shirts. */
const wetDay: PastDay = {
  ...dryDay,
  ...{ stallDayId: 'market', sellingHours: 4, weather: of(['Wet', 0.3, 1]), expected: 12 },
  wanted: [shirt('fern', 'M', 6), shirt('otter', 'M', 0)],
};

const pieces = (day: Partial<StallDay>, past: readonly PastDay[] = []) =>
  Object.fromEntries(rangePieces({ stallDay: { ...stallDay, ...day }, past, piecesPerTicket: 1.5 }));

describe('pieces asked for', () => {
  it('are those that were typed', () => {
    expect(pieces({})).toEqual({ shirts: 54, mugs: 22 });
  });

  it('of visitors are those who stop and buy, by the pieces on a ticket, over the ranges in proportion', () => {
    // 1,000 × 10 % × 20 % × 1.5 = 30, of which 54 of 76 are shirts.
    const found = pieces({
      forecast: { from: 'visitors', visitors: 1000, stopShare: share(0.1), buyShare: share(0.2) },
    });
    expect(found.shirts).toBeCloseTo((30 * 54) / 76, 12);
    expect(found.mugs).toBeCloseTo((30 * 22) / 76, 12);
  });

  it('of visitors are as many on each of two days, for they are told of a day', () => {
    if (fairDay === undefined) throw new Error('the fair has no day');
    const found = pieces({
      days: [fairDay, { ...fairDay, id: 'sunday', day: addDays(fairDay.day, 1), weight: 3 }],
      forecast: { from: 'visitors', visitors: 1000, stopShare: share(0.1), buyShare: share(0.2) },
    });
    // Twice 30, of which 54 of 76 are shirts, however they lie on the days.
    expect(found.shirts).toBeCloseTo((60 * 54) / 76, 12);
    expect(found.mugs).toBeCloseTo((60 * 22) / 76, 12);
  });

  it.each([
    ['visitors', { visitors: null }],
    ['those who stop', { stopShare: null }],
    ['those who buy', { buyShare: null }],
  ])('of visitors cannot be told where %s are not known', (_, unknown) => {
    const known = { visitors: 1000, stopShare: share(0.1), buyShare: share(0.2) };
    expect(pieces({ forecast: { from: 'visitors', ...known, ...unknown } })).toEqual({
      ...{ shirts: null, mugs: null },
    });
  });

  it('of visitors cannot be told where no range has a part of them', () => {
    const ranges = stallDay.ranges.map((range) => ({ ...range, pieces: 0 }));
    const forecast = {
      from: 'visitors',
      visitors: 1000,
      stopShare: share(0.1),
      buyShare: share(0.2),
    } as const;
    expect(pieces({ ranges, forecast })).toEqual({ shirts: null, mugs: null });
  });

  it('of visitors are all of the only range, whatever its proportion', () => {
    const ranges = stallDay.ranges.slice(0, 1).map((range) => ({ ...range, pieces: null }));
    const forecast = {
      from: 'visitors',
      visitors: 1000,
      stopShare: share(0.1),
      buyShare: share(0.2),
    } as const;
    expect(pieces({ ranges, forecast }).shirts).toBeCloseTo(30, 12);
  });

  it('of days before are their mean of an hour on a dry day, over the hours of this one', () => {
    // 30 ÷ 6 = 5 an hour; 6 ÷ 4 ÷ 0.3 = 5 an hour. Seven hours with half as many visitors again: 52.5.
    const found = pieces(
      { forecast: { from: 'pastDays', stallDayIds: ['autumn', 'market'], footfallRatio: 1.5 } },
      [dryDay, wetDay],
    );
    expect(found.shirts).toBeCloseTo(52.5, 12);
    // No day knew mugs: they follow their proportion to the shirts.
    expect(found.mugs).toBeCloseTo((52.5 * 22) / 54, 12);
  });

  it('of days before leave out a day without hours, and one of which no dry day can be told', () => {
    const odd = [
      { ...dryDay, stallDayId: 'shut', sellingHours: 0 },
      { ...dryDay, stallDayId: 'storm', weather: of(['storm', 0, 1]) },
    ];
    const forecast = (...stallDayIds: string[]) =>
      ({ from: 'pastDays', stallDayIds, footfallRatio: 1 }) as const;
    // 5 an hour on the dry day, over seven.
    expect(pieces({ forecast: forecast('autumn', 'shut', 'storm') }, [dryDay, ...odd]).shirts).toBe(35);
    expect(pieces({ forecast: forecast('shut', 'storm') }, odd)).toEqual({ shirts: null, mugs: null });
  });

  it('of days before that are not there cannot be told', () => {
    const forecast: StallDay['forecast'] = { from: 'pastDays', stallDayIds: ['gone'], footfallRatio: 1 };
    expect(pieces({ forecast }, [dryDay])).toEqual({ shirts: null, mugs: null });
  });
});

describe('designs', () => {
  const [shirts] = stallDay.ranges;
  if (shirts === undefined) throw new Error('the fair has no shirts');

  it('share what is asked for as they did, and new ones as typed', () => {
    // Fern and Otter had 18 and 12 of 30, and 0.32 + 0.25 of the typed parts.
    const [fern, lighthouse, otter, star] = designShares([shirts], shirts, [dryDay]);
    expect(fern).toBeCloseTo(0.6 * 0.57, 12);
    expect(otter).toBeCloseTo(0.4 * 0.57, 12);
    expect([lighthouse, star]).toEqual([0.27, 0.16]);
  });

  it('that nobody bought on a day before keep the parts that were typed', () => {
    const none = { ...dryDay, wanted: [shirt('fern', 'M', 0), shirt('otter', 'L', 0)] };
    const shares = designShares([shirts], shirts, [none]);
    for (const [at, typed] of [0.32, 0.27, 0.25, 0.16].entries()) expect(shares[at]).toBeCloseTo(typed, 12);
  });

  it('that were sold and have no typed part take what they sold beside the parts of the others', () => {
    const designs = shirts.designs.map((one) =>
      ['fern', 'otter'].includes(one.lineId) ? { ...one, share: 0 } : one,
    );
    // Fern 18 and Otter 12 of 30 beside 0.27 and 0.16: 0.6 and 0.4 of 1.43.
    const shares = designShares([{ ...shirts, designs }], { ...shirts, designs }, [dryDay]);
    for (const [at, part] of [0.6, 0.27, 0.4, 0.16].entries())
      expect(shares[at]).toBeCloseTo(part / 1.43, 12);
  });

  it('are measured by the days on which they were along: one that missed a day counts as the other', () => {
    // Fern brought 20 and 20 in seven hours, Otter 20 on the only day it was there.
    const days = [
      { ...dryDay, sellingHours: 7, wanted: [shirt('fern', 'L', 20)] },
      {
        ...dryDay,
        stallDayId: 'q',
        sellingHours: 7,
        wanted: [shirt('fern', 'L', 20), shirt('otter', 'L', 20)],
      },
    ];
    const of = (id: string) => shirts.designs.filter(({ lineId }) => lineId === id);
    const range = { ...shirts, designs: [...of('fern'), ...of('otter')] };
    const [fern, otter] = designShares([range], range, days);
    expect(fern).toBeCloseTo(0.5, 12);
    expect(otter).toBeCloseTo(0.5, 12);
    // So forty are asked for where both are there, and not the thirty of the mean day.
    const forecast: StallDay['forecast'] = {
      from: 'pastDays',
      stallDayIds: ['autumn', 'q'],
      footfallRatio: 1,
    };
    expect(pieces({ forecast, ranges: [range] }, days).shirts).toBeCloseTo(40, 9);
  });

  it('that stand in another range now are asked for there alone, and those of no range where its name is', () => {
    const of = (id: string) => shirts.designs.filter(({ lineId }) => lineId === id);
    const ranges = [
      { ...shirts, designs: of('otter') },
      { ...shirts, id: 'best', name: 'Best sellers', designs: of('fern') },
    ];
    const day = { ...dryDay, sellingHours: 7, wanted: [...dryDay.wanted, shirt('gone', 'L', 5)] };
    const forecast: StallDay['forecast'] = { from: 'pastDays', stallDayIds: ['autumn'], footfallRatio: 1 };
    // Otter 12 and the design that is gone 5; Fern 12 + 6.
    const found = pieces({ forecast, ranges }, [day]);
    expect(found.shirts).toBeCloseTo(17, 9);
    expect(found.best).toBeCloseTo(18, 9);
    // The same design in two ranges is that of the first, as its goods are.
    const twice = pieces({ forecast, ranges: [shirts, ...ranges.slice(1)] }, [day]);
    expect(twice.shirts).toBeCloseTo(35, 9);
  });

  it('keep their part where one of them is left at home', () => {
    const left = shirts.designs.map((design, at) => ({ ...design, isLeftOut: at === 0 }));
    const { goods } = plannedFair(fairWith({ ranges: [{ ...shirts, designs: left }], held: [] }));
    expect(goods.reduce((sum, { expected }) => sum + expected, 0)).toBeCloseTo(54 * 0.68, 9);
    expect(goods.some(({ lineId }) => lineId === 'fern')).toBe(false);
  });
});

describe('sizes', () => {
  it('are the usual mix, blended with own sales as if it were 50 pieces', () => {
    const typed = {
      from: 'typed',
      shares: [
        { size: 'M', share: 0.4 },
        { size: 'L', share: 0.6 },
      ],
    } as const;
    const shares = sizeShares({ ...typed, shares: [...typed.shares] }, new Map([['M', 30]]), ['M', 'L']);
    // (50 × 0.4 + 30) ÷ 80 and 50 × 0.6 ÷ 80.
    expect([shares.get('M'), shares.get('L')]).toEqual([0.625, 0.375]);
  });

  it('go by the crowd alone where own sales are left out', () => {
    const fernM = (more: Partial<StallDay>) => {
      const { goods } = plannedFair(fairWith({ held: [], ...more }, { past: [dryDay, wetDay] }));
      return goods.find(({ lineId, size }) => lineId === 'fern' && size === 'M')?.expected;
    };
    // 0.32 of 54 are Fern. Of 36 that own days asked for 18 were M: (50 × 0.26 + 18) ÷ 86; without them 0.26.
    expect(fernM({})).toBeCloseTo((54 * 0.32 * 31) / 86, 12);
    expect(fernM({ areOwnSizesLeftOut: true })).toBeCloseTo(54 * 0.32 * 0.26, 12);
    expect(fernM({ areOwnSizesLeftOut: false })).toBe(fernM({}));
  });

  it('are those that orders asked for, too, once the maker agreed, and not where own sales are left out', () => {
    const fernM = (more: Partial<StallDay>) => {
      const ranges = stallDay.ranges.map((range) =>
        range.sizes === null ? range : { ...range, sizes: { ...range.sizes, ordered } },
      );
      const { goods } = plannedFair(fairWith({ held: [], ranges, ...more }, { past: [dryDay, wetDay] }));
      return goods.find(({ lineId, size }) => lineId === 'fern' && size === 'M')?.expected;
    };
    const ordered = [
      { size: 'M', pieces: 9 },
      { size: 'L', pieces: 5 },
    ];
    // As above with 9 more of 14: (50 × 0.26 + 18 + 9) ÷ 100.
    expect(fernM({})).toBeCloseTo(54 * 0.32 * 0.4, 12);
    expect(fernM({ areOwnSizesLeftOut: true })).toBeCloseTo(54 * 0.32 * 0.26, 12);
  });

  it('that own days asked for are those of the range, in sizes it has', () => {
    const [shirts] = stallDay.ranges;
    if (shirts === undefined) throw new Error('the fair has no shirts');
    // 12 and 6 M, 18 L.
    expect(ownPieces([shirts], shirts, [dryDay, wetDay], ['S', 'M', 'L'])).toBe(36);
    expect(ownPieces([shirts], shirts, [dryDay, wetDay], ['M'])).toBe(18);
    expect(
      ownPieces(
        [{ ...shirts, name: 'Bags', designs: [] }],
        { ...shirts, name: 'Bags', designs: [] },
        [dryDay],
        ['M'],
      ),
    ).toBe(0);
  });

  it('that a blank does not come in leave their part to the others', () => {
    const shares = sizeShares({ from: 'audience', audience: 'youth' }, new Map(), ['S', 'M']);
    // 0.24 and 0.31 of 0.55.
    expect(shares.get('S')).toBeCloseTo(0.24 / 0.55, 12);
    expect(shares.get('M')).toBeCloseTo(0.31 / 0.55, 12);
  });

  it('of each crowd add to a whole', () => {
    for (const curve of Object.values(stallSizeCurves))
      expect(Object.values(curve).reduce((sum, part) => sum + part, 0)).toBeCloseTo(1, 12);
  });
});

describe('weathers of several days', () => {
  const [dry, , wet] = stallDay.weathers;
  if (dry === undefined || wet === undefined) throw new Error('the fair has no weathers');
  const two = [
    { ...dry, chance: share(0.8) },
    { ...wet, chance: share(0.2), factor: share(0.3) },
  ];
  const days = (...weights: readonly number[]) =>
    weights.map((weight, at) => ({ ...fairDay, id: `day-${at}`, weight }));

  it('of the same weight that come to the same are one, named by the first', () => {
    const found = scenariosOf({ weathers: two, days: days(1, 1) });
    expect(found.map(({ name }) => name)).toEqual(['dry, dry', 'dry, wet', 'wet, wet']);
    for (const [at, chance, factor] of [
      [0, 0.64, 1],
      [1, 0.32, 0.65],
      [2, 0.04, 0.3],
    ] as const) {
      expect(found[at]?.chance).toBeCloseTo(chance, 12);
      expect(found[at]?.factor).toBeCloseTo(factor, 12);
    }
  });

  it('count each day by its weight', () => {
    const found = scenariosOf({ weathers: two, days: days(3, 1) });
    expect(found.map(({ name, factor }) => [name, Number(factor.toFixed(9))])).toEqual([
      ['dry, dry', 1],
      ['dry, wet', 0.825],
      ['wet, dry', 0.475],
      ['wet, wet', 0.3],
    ]);
  });

  it.each([
    // So many ways to have three weathers on so many days alike: (n + 1)(n + 2) ÷ 2 of 3^n orders.
    [[1, 1, 1], 10],
    [[1, 1, 1, 1], 15],
    [[1, 1, 1, 1, 1, 1, 1], 36],
    // Twice two days alike: six each.
    [[1, 2, 1, 2], 36],
    [[1, 2, 3], 27],
  ])('of days that weigh %j are %i, for orders over days alike are one', (weights, count) => {
    const found = scenariosOf({ weathers: stallDay.weathers, days: days(...weights) });
    expect(found).toHaveLength(count);
    expect(found.reduce((sum, { chance }) => sum + chance, 0)).toBeCloseTo(1, 12);
    expect(holdsOneWeather({ weathers: stallDay.weathers, days: days(...weights) })).toBe(false);
  });

  it('of four days alike have the chances of all their orders together', () => {
    const found = scenariosOf({ weathers: stallDay.weathers, days: days(1, 1, 1, 1) });
    const mixed = found.find(({ name }) => name === 'dry, dry, showers, wet');
    // Twelve orders of 0.65² × 0.25 × 0.1; (1 + 1 + 0.65 + 0.3) ÷ 4.
    expect(mixed?.chance).toBeCloseTo(0.12675, 12);
    expect(mixed?.factor).toBeCloseTo(0.7375, 12);
    // One weather for all four would have a wet fair on every tenth.
    expect(found.at(-1)).toMatchObject({ name: 'wet, wet, wet, wet', chance: expect.closeTo(0.0001, 12) });
  });

  it('are one weather for all days where more than 64 differ, and that is said beside the plan', () => {
    const four = days(1, 2, 3, 4).map((day, at) => ({ ...day, day: addDays(TEST_DAY, at) }));
    // 81 orders, all over days that differ.
    const found = scenariosOf({ weathers: stallDay.weathers, days: four });
    expect(found.map(({ weatherIds }) => weatherIds.join())).toEqual([
      'dry,dry,dry,dry',
      'showers,showers,showers,showers',
      'wet,wet,wet,wet',
    ]);
    expect(holdsOneWeather({ weathers: stallDay.weathers, days: four })).toBe(true);
    expect(plannedFair(fairWith({ days: four })).troubles).toEqual([{ kind: 'oneWeather' }]);
    const alike = four.map((day) => ({ ...day, weight: 1 }));
    expect(plannedFair(fairWith({ days: alike })).troubles).toEqual([]);
  });

  it('that are other weathers stay apart, though they come to the same', () => {
    // Twice 0.65 leaves what 1 and 0.3 leave; showers on both days have a chance of 0.25 × 0.25.
    const found = scenariosOf({ weathers: stallDay.weathers, days: days(1, 1) });
    expect(found.map(({ weatherIds, chance }) => [weatherIds.join(), Number(chance.toFixed(9))])).toEqual([
      ['dry,dry', 0.4225],
      ['dry,showers', 0.325],
      ['dry,wet', 0.13],
      ['showers,showers', 0.0625],
      ['showers,wet', 0.05],
      ['wet,wet', 0.01],
    ]);
  });

  it('follow the days and not the order in which they were typed', () => {
    const [sunday, saturday] = days(1, 3).map((day, at) => ({ ...day, day: addDays(TEST_DAY, 1 - at) }));
    if (sunday === undefined || saturday === undefined) throw new Error('two days were asked for');
    const found = scenariosOf({ weathers: two, days: [sunday, saturday] });
    // Dry on Saturday, which weighs three, and wet on Sunday: (3 + 0.3) ÷ 4.
    expect(found.find(({ name }) => name === 'dry, wet')?.factor).toBeCloseTo(0.825, 12);
  });

  it('whose chances a rounding keeps from a whole are parts of it', () => {
    const thirds = stallDay.weathers.map((one) => ({ ...one, chance: share(0.333) }));
    const found = scenariosOf({ weathers: thirds, days: days(1) });
    expect(found.map(({ chance }) => chance.toFixed(12))).toEqual(Array(3).fill((1 / 3).toFixed(12)));
  });
});

describe('open hours', () => {
  it('add up over days, and go on after midnight', () => {
    const night = { ...fairDay, fromMinute: 20 * 60, toMinute: 90 };
    expect(openHours({ days: [fairDay, night] })).toBe(7 + 5.5);
  });

  it('are none of a day that ends as it begins', () => {
    expect(openHours({ days: [fairDay, { ...fairDay, toMinute: fairDay.fromMinute }] })).toBe(7);
  });
});

describe('what days before say of a weather', () => {
  it('is the mean of theirs and of the planned factor, which counts like two', () => {
    // The wet day left 6 of the 40 that 12 ÷ 0.3 says of a dry one: 0.15. (2 × 0.3 + 0.15) ÷ 3 = 0.25.
    expect(learnedFactors(stallDay.weathers, [dryDay, wetDay])).toEqual([
      { weatherId: 'wet', name: 'wet', typed: 0.3, learned: expect.closeTo(0.25, 12), days: 1 },
    ]);
  });

  it('counts of a day that changed only the part that had it, less what the rest left by its plan', () => {
    // Four of seven hours dry, three wet, 40 on a dry day: 26 wanted are 0.65 of it, of which 4/7 were for the dry hours.
    // (2 × 0.3 + 0.65 − 4/7) ÷ (2 + 3/7) = 0.2794.
    const mixed = of(['dry', 1, 4 / 7], ['wet', 0.3, 3 / 7]);
    const day = {
      ...dryDay,
      weather: mixed,
      expected: 40 * (mixed?.factor ?? 0),
      wanted: [shirt('fern', 'M', 26)],
    };
    expect(learnedFactors(stallDay.weathers, [day])).toEqual([
      { weatherId: 'wet', name: 'wet', typed: 0.3, learned: expect.closeTo(0.2794, 4), days: 1 },
    ]);
  });

  it('is nothing left, and not less, of a part of which the rest took all that was wanted', () => {
    // 10 of 40 are a quarter, and the dry hours alone were to take 4/7: (2 × 0.3 + 0) ÷ (2 + 3/7) = 0.2471.
    const mixed = of(['dry', 1, 4 / 7], ['wet', 0.3, 3 / 7]);
    const expected = 40 * (mixed?.factor ?? 0);
    const day = { ...dryDay, weather: mixed, expected, wanted: [shirt('fern', 'M', 10)] };
    expect(learnedFactors(stallDay.weathers, [day])[0]?.learned).toBeCloseTo(0.6 / (2 + 3 / 7), 12);
  });

  it('is nothing where no day had it, or nothing was expected of one', () => {
    expect(learnedFactors(stallDay.weathers, [{ ...wetDay, expected: null }, dryDay])).toEqual([]);
  });

  it('changes no plan by itself', () => {
    const wets = plannedFair(fairWith({}, { past: [wetDay] })).mine.outcomes.map(({ factor }) => factor);
    expect(wets).toEqual([1, 0.65, 0.3]);
  });
});
