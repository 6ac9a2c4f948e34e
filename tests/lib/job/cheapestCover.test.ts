import { describe, expect, it } from 'vitest';
import { cheapestCover } from '@/lib/job/cheapestCover';
import { coverSearch } from '@/lib/job/coverSearch';

const sumOf = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0);

/** At least so many good of so many, from the definition: all ways in which few enough are spoiled. */
function tail(tries: number, pieces: number, chance: number): number {
  let sum = 0;
  let ways = 1;
  for (let spoiled = 0; spoiled <= tries - pieces; spoiled += 1) {
    sum += ways * chance ** (tries - spoiled) * (1 - chance) ** spoiled;
    ways = (ways * (tries - spoiled)) / (spoiled + 1);
  }
  return sum;
}

interface Size {
  readonly pieces: number;
  readonly chance: number;
  readonly price: number;
}

/** Every set of up to `more` spares a size; the cheapest that reaches, then the fewest, then the one that reaches most. */
function bruteForce(sizes: readonly Size[], confidence: number, more: number) {
  let sets = [{ blanks: [] as number[], covered: 1 }];
  for (const { pieces, chance } of sizes) {
    sets = sets.flatMap(({ blanks, covered }) =>
      Array.from({ length: more + 1 }, (_, spare) => ({
        blanks: [...blanks, pieces + spare],
        covered: covered * tail(pieces + spare, pieces, chance),
      })),
    );
  }
  const cost = (blanks: readonly number[]) =>
    sumOf(blanks.map((count, at) => count * (sizes[at]?.price ?? 0)));
  return sets
    .filter(({ covered }) => covered >= confidence - 1e-12)
    .map((set) => ({ ...set, cost: cost(set.blanks), pieces: sumOf(set.blanks) }))
    .reduce((best, set) => {
      const cheaper = Math.abs(set.cost - best.cost) < 1e-9 ? set.pieces - best.pieces : set.cost - best.cost;
      return cheaper < 0 || (cheaper === 0 && set.covered > best.covered + 1e-12) ? set : best;
    });
}

const found = (sizes: readonly Size[], confidence: number) => {
  const cover = cheapestCover(
    sizes.map(({ price, ...good }) => ({ wanted: [good], price })),
    confidence,
  );
  return { ...cover, cost: sumOf(cover.blanks.map((count, at) => count * (sizes[at]?.price ?? 0))) };
};

describe('the cheapest cover', () => {
  // All of up to three sizes of up to five pieces; a spare beyond six is never worth it at these chances.
  const counts = [1, 2, 3, 4, 5];
  const prices = [
    [4, 4, 4],
    [1, 2, 3],
    [4.6, 6.1, 7.1],
    [7.1, 4.6, 0],
  ] as const;
  const chances = [
    [0.9, 0.9, 0.9],
    [0.95, 0.8, 0.9],
  ] as const;

  it.each(prices.flatMap((price) => chances.map((chance) => ({ price, chance }))))(
    'is what trying every set finds, at prices $price and chances $chance',
    ({ price, chance }) => {
      const shapes = counts.flatMap((one) => [
        [one],
        ...counts.flatMap((two) => [[one, two], ...counts.map((three) => [one, two, three])]),
      ]);
      for (const shape of shapes) {
        const sizes = shape.map((pieces, at) => ({
          ...{ pieces, chance: chance[at] ?? 1, price: price[at] ?? 0 },
        }));
        for (const confidence of [0.5, 0.75, 0.95]) {
          const cover = found(sizes, confidence);
          const best = bruteForce(sizes, confidence, 6);
          const about = `${shape} at ${confidence}`;
          expect(cover.cost, about).toBeCloseTo(best.cost, 9);
          expect(sumOf(cover.blanks), about).toBe(best.pieces);
          expect(cover.covered, about).toBeCloseTo(best.covered, 12);
          expect(cover.dearerAtMost).toBe(0);
        }
      }
    },
  );

  // S4 M9 L11 XL8 2XL4 3XL1 at p = 0.965 × 0.98 × 0.99, at 4.60, 6.10 and 7.10.
  const shirts = [4, 9, 11, 8, 4, 1].map((pieces, at) => ({
    ...{ pieces, chance: 0.965 * 0.98 * 0.99, price: [4.6, 4.6, 4.6, 4.6, 6.1, 7.1][at] ?? 0 },
  }));
  const wanted = sumOf(shirts.map(({ pieces, price }) => pieces * price));

  // The trade's worked figures: one spare after the other where it helps most spends 45.40 and 96.90.
  it.each([
    [0.75, [5, 11, 13, 10, 5, 1], 38.3],
    [0.79, [5, 11, 14, 10, 5, 1], 42.9],
    [0.95, [6, 12, 14, 10, 6, 2], 65.3],
    [0.99, [7, 13, 15, 12, 7, 2], 94.4],
  ])('of the club at %d is %j, spares of %d', (confidence, blanks, spent) => {
    const cover = found(shirts, confidence);
    expect(cover.blanks).toEqual(blanks);
    expect(cover.cost - wanted).toBeCloseTo(spent, 9);
  });

  it.each([
    [0.75, 0.789],
    [0.95, 0.9505],
  ])('of the club at %d reaches %d', (confidence, reached) => {
    const { covered, chances } = found(shirts, confidence);
    expect(covered).toBeCloseTo(reached, confidence === 0.75 ? 3 : 4);
    expect(chances.reduce((all, one) => all * one, 1)).toBeCloseTo(covered, 12);
  });

  it('of a size that two works share is that of their tries one after the other', () => {
    // One at 0.9 and one at 0.5: both whole in two tries 0.45, in three 0.45 + 0.45 × (0.1 + 0.5) = 0.72,
    // in four 0.72 + 0.45 × (0.01 + 0.05 + 0.25) = 0.8595.
    const two = [
      { pieces: 1, chance: 0.9 },
      { pieces: 1, chance: 0.5 },
    ];
    const both = (confidence: number) => cheapestCover([{ wanted: two, price: 1 }], confidence);
    expect(both(0.72).blanks).toEqual([3]);
    expect(both(0.72).covered).toBeCloseTo(0.72, 12);
    expect(both(0.75).covered).toBeCloseTo(0.8595, 12);
    const alike = [2, 3].map((pieces) => ({ pieces, chance: 0.9 }));
    expect(cheapestCover([{ wanted: alike, price: 1 }], 0.95)).toEqual(
      cheapestCover([{ wanted: [{ pieces: 5, chance: 0.9 }], price: 1 }], 0.95),
    );
  });

  it('covers nothing with nothing', () => {
    expect(cheapestCover([], 0.95)).toEqual({ blanks: [], chances: [], covered: 1, dearerAtMost: 0 });
    expect(found([{ pieces: 0, chance: 0.9, price: 1 }], 0.95)).toMatchObject({ blanks: [0], covered: 1 });
  });
});

describe('a search that is cut short', () => {
  // Two prices: spares of 3 that gain 0.5 each, of 2 that gain 0.3 each; 0.8 is lacking.
  const groups = [
    { price: 3, spareAt: (_: number) => ({ size: 0, gain: 0.5 }) },
    { price: 2, spareAt: (_: number) => ({ size: 1, gain: 0.3 }) },
  ];

  it('tells how much dearer it may be: two at 3 where a 3 and a 2 do, and fractions would cost 4.80', () => {
    expect(coverSearch(groups, 0.8).spares.map(({ size }) => size)).toEqual([0, 1]);
    expect(coverSearch(groups, 0.8).dearerAtMost).toBe(0);
    const cut = coverSearch(groups, 0.8, 0);
    expect(cut.spares.map(({ size }) => size)).toEqual([0, 0]);
    expect(cut.dearerAtMost).toBeCloseTo(1.2, 6);
  });
});
