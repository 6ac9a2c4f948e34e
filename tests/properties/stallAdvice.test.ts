import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { adviseBring } from '@/lib/stall/plan/advice/adviseBring';
import { ruleBring } from '@/lib/stall/plan/advice/ruleBring';
import { type GoodsReckoned, reckonGoods } from '@/lib/stall/plan/goodsReckoned';
import { fairAsked, fairWith, plannedFair } from '@/tests/fixtures/fairAsked';
import { fixedRate, typed } from '@/tests/fixtures/numbers';
import { cases } from '@/tests/tools/cases';

/*
 * How many to bring, against every other number tried: chances by their definition, sums added up one by one.
 */
const [line] = fairAsked.jobs[0]?.input.job.lines ?? [];
if (line === undefined) throw new Error('the fair has no shirt');

interface Drawn {
  readonly design: number;
  readonly size: string;
  readonly expected: number;
  readonly price: number;
  readonly cost: number;
  readonly overhead: number;
  readonly leftoverShare: number;
  readonly atHome: number;
}

interface Weather {
  readonly name: string;
  readonly chance: number;
  readonly factor: number;
}

const one: fc.Arbitrary<Drawn> = fc.record({
  design: fc.integer({ min: 0, max: 1 }),
  size: fc.constantFrom('S', 'M', 'L'),
  expected: typed(0.02, 3),
  price: typed(8, 40),
  cost: typed(0.5, 14),
  overhead: typed(0, 1),
  leftoverShare: typed(0, 0.95),
  atHome: fc.integer({ min: 0, max: 2 }),
});

const weathers: fc.Arbitrary<readonly Weather[]> = fc
  .tuple(typed(0, 1), typed(0, 1))
  .map(([chance, factor]) => [
    { name: 'dry', chance: 1 - chance, factor: 1 },
    { name: 'wet', chance, factor },
  ]);

function reckoned({ design, size, expected, ...drawn }: Drawn, of: readonly Weather[]): GoodsReckoned {
  const { price, cost, overhead, leftoverShare, atHome } = drawn;
  return reckonGoods(
    {
      ...{
        jobId: 'job',
        lineId: `design-${design}`,
        size,
        rangeId: 'range',
        design: 'Fern',
        line: line as never,
      },
      ...{ leftoverShare, expected, atHome, finishedBefore: atHome, held: null },
    },
    {
      ...{ cost, costWithOverhead: cost + overhead, cash: cost / 2, packaging: 0.1 },
      ...{ feeShare: 0.02, cardFixed: 0.05 },
    },
    price,
    { taxMode: 'inside', tax: fixedRate(0.07, 'share') },
    of,
  );
}

/** Mean sold of so many, term by term. */
function sold({ expected }: Pick<Drawn, 'expected'>, of: readonly Weather[], brought: number): number {
  let sum = 0;
  for (const { chance, factor } of of) {
    const mean = expected * factor;
    let [count, part, reached] = [0, Math.exp(-mean), 0];
    for (; count < brought; count += 1, part *= mean / count) {
      sum += chance * count * part;
      reached += part;
    }
    sum += chance * brought * (1 - reached);
  }
  return sum;
}

/** What so many earn over leaving all at home; those from home are sold first, and are worth their leftover value either way. */
function worth(drawn: Drawn, of: readonly Weather[], brought: number): number {
  const cost = drawn.cost + drawn.overhead;
  const net = drawn.price / 1.07;
  const kept = net - (net * 0.02 + 0.05) - 0.1;
  const home = Math.min(brought, drawn.atHome);
  const homeSold = sold(drawn, of, home);
  const madeSold = sold(drawn, of, brought) - homeSold;
  const made = brought - home;
  return (
    // Nobody works on what is finished, so no overhead is in it.
    homeSold * (kept - drawn.leftoverShare * drawn.cost) +
    madeSold * kept +
    (made - madeSold) * drawn.leftoverShare * cost -
    made * cost
  );
}

describe('the rule', () => {
  it('brings what no other number betters, one at most away from the least that is best', () => {
    fc.assert(
      fc.property(one, weathers, (drawn, of) => {
        const fresh = { ...drawn, atHome: 0 };
        const bring = ruleBring(reckoned(fresh, of));
        const tried = Array.from({ length: 60 }, (_, count) => worth(fresh, of, count));
        const best = Math.max(...tried);
        expect(worth(fresh, of, bring)).toBeGreaterThan(best - 1e-9);
        const least = tried.findIndex((earned) => earned > best - 1e-9);
        expect(Math.abs(bring - least)).toBeLessThanOrEqual(1);
      }),
      cases(400),
    );
  });

  it('brings no fewer at a higher price, nor where more is asked for or more is left of what stays', () => {
    fc.assert(
      fc.property(one, weathers, typed(1, 2), (drawn, of, times) => {
        const bring = (changes: Partial<Drawn>) => ruleBring(reckoned({ ...drawn, ...changes }, of));
        const usual = bring({});
        expect(bring({ price: drawn.price * times })).toBeGreaterThanOrEqual(usual);
        expect(bring({ expected: drawn.expected * times })).toBeGreaterThanOrEqual(usual);
        const leftoverShare = Math.min(0.95, drawn.leftoverShare * times);
        expect(bring({ leftoverShare })).toBeGreaterThanOrEqual(usual);
      }),
      cases(300),
    );
  });
});

describe('within limits', () => {
  const goods = fc.uniqueArray(one, {
    minLength: 2,
    maxLength: 5,
    selector: ({ design, size }) => `${design} ${size}`,
  });
  /** Of what is brought without limits, so that they press. */
  const limits = fc.record({
    table: fc.option(typed(0, 1)),
    money: fc.option(typed(0, 1)),
  });
  const LEAST = ['M', 'L'];

  /** Of a design of which anything is pressed the middle sizes come along. */
  const isWhole = (drawn: readonly Drawn[], bring: readonly number[]) =>
    drawn.every(({ design, size }, at) => {
      const isPressed = drawn.some(
        (other, index) => other.design === design && (bring[index] ?? 0) > other.atHome,
      );
      return !isPressed || !LEAST.includes(size) || (bring[at] ?? 0) > 0;
    });

  const isAllOrNothing = (drawn: readonly Drawn[], bring: readonly number[]) =>
    isWhole(
      drawn.map((one) => ({ ...one, atHome: 0 })),
      bring,
    );

  const cashOf = (drawn: readonly Drawn[], bring: readonly number[]) =>
    drawn.reduce((sum, { cost, atHome }, at) => {
      const brought = bring[at] ?? 0;
      return sum + brought * 0.1 + Math.max(0, brought - atHome) * (cost / 2);
    }, 0);

  function* choices(most: readonly number[], chosen: readonly number[] = []): Generator<readonly number[]> {
    const next = most[chosen.length];
    if (next === undefined) yield chosen;
    else for (let count = 0; count <= next; count += 1) yield* choices(most, [...chosen, count]);
  }

  it('no choice earns more than the advice and the gap it tells, and the advice keeps the limits', () => {
    fc.assert(
      fc.property(goods, weathers, limits, (drawn, of, { table, money }) => {
        const all = drawn.map((each) => reckoned(each, of));
        const total = (numbers: readonly number[]) => numbers.reduce((sum, count) => sum + count, 0);
        const free = adviseBring(all, { tablePieces: null, cash: null }).bring;
        const tablePieces = table === null ? null : Math.floor(table * total(free));
        const cash = money === null ? null : money * cashOf(drawn, free);
        const { bring, gap, trimmedFor } = adviseBring(all, { tablePieces, cash });
        const fits = (numbers: readonly number[]) =>
          (tablePieces === null || total(numbers) <= tablePieces) &&
          (cash === null || cashOf(drawn, numbers) <= cash + 1e-9) &&
          isWhole(drawn, numbers);
        expect(fits(bring)).toBe(true);
        const earned = (numbers: readonly number[]) =>
          drawn.reduce((sum, each, at) => sum + worth(each, of, numbers[at] ?? 0), 0);
        // No more than the rule is ever worth it, but for the first of a middle size.
        const most = all.map((each) => Math.max(each.atHome, ruleBring(each), 1));
        const bestOf = (among: (numbers: readonly number[]) => boolean) => {
          let best = Number.NEGATIVE_INFINITY;
          for (const numbers of choices(most)) if (among(numbers)) best = Math.max(best, earned(numbers));
          return best;
        };
        // Where no limit presses a design that pays comes whole, though what lies finished may earn more alone.
        const isMeant = (numbers: readonly number[]) =>
          fits(numbers) && (trimmedFor !== null || isAllOrNothing(drawn, numbers));
        expect(earned(bring) + gap).toBeGreaterThan(bestOf(isMeant) - 1e-7);
        // Nor is more told than pieces without limits could earn; of one limit no more than a single design could.
        const isFree = (numbers: readonly number[]) => isWhole(drawn, numbers);
        expect(earned(bring) + gap).toBeLessThan(bestOf(isFree) + 1e-7);
        const isTwofold = tablePieces !== null && cash !== null;
        const ofDesign = (only: number) =>
          bestOf(
            (numbers) =>
              isFree(numbers) && drawn.every(({ design }, at) => design === only || numbers[at] === 0),
          );
        if (!isTwofold) expect(gap).toBeLessThan(Math.max(ofDesign(0), ofDesign(1)) + 1e-7);
      }),
      cases(120),
    );
  });

  it('tells no gap where nothing is limited', () => {
    fc.assert(
      fc.property(goods, weathers, (drawn, of) => {
        const advice = adviseBring(
          drawn.map((each) => reckoned(each, of)),
          { tablePieces: null, cash: null },
        );
        expect([advice.gap, advice.trimmedFor]).toEqual([0, null]);
      }),
      cases(50),
    );
  });
});

describe('the figures over all weathers', () => {
  it('are those of each weather by its chance', () => {
    fc.assert(
      fc.property(typed(0, 1), typed(0, 1.5), (chance, factor) => {
        const [dry] = fairAsked.stallDay.weathers;
        if (dry === undefined) throw new Error('the fair has no weather');
        const weather = (name: string, share: number, left: number) => ({
          ...dry,
          ...{ id: name, name, chance: fixedRate(share, 'share'), factor: fixedRate(left, 'share') },
        });
        const { mine } = plannedFair(
          fairWith({ weathers: [weather('dry', 1 - chance, 1), weather('other', chance, factor)] }),
        );
        for (const figure of [
          'sold',
          'netRevenue',
          'fees',
          'contribution',
          'leftoverCost',
          'profit',
        ] as const)
          expect(mine.weighted[figure]).toBeCloseTo(
            mine.outcomes.reduce((sum, outcome) => sum + outcome.chance * outcome[figure], 0),
            7,
          );
      }),
      cases(6),
    );
  });
});
