import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Box, LaidBox } from '@/lib/packing/box';
import { cutPoints } from '@/lib/packing/columns/cutPoints';
import { CutTable } from '@/lib/packing/columns/cutTable';
import { Pace } from '@/lib/packing/columns/pace';
import { cases } from '@/tests/tools/cases';

interface Sides {
  readonly width: number;
  readonly height: number;
}

function filled(bin: Sides, ways: readonly Box[], prices: readonly number[], mostPoints = 1_000) {
  const across = cutPoints(bin.width, [...new Set(ways.map(({ width }) => width))], mostPoints);
  const down = cutPoints(bin.height, [...new Set(ways.map(({ height }) => height))], mostPoints);
  const table = new CutTable(across, down, ways);
  const search = table.fill(Float64Array.from(prices), new Pace({ steps: 1e9 }));
  for (;;) {
    const { done, value } = search.next();
    if (done === true)
      return { worth: value, boxes: table.layOut(), complete: across.complete && down.complete };
  }
}

const turning = (sides: readonly (readonly [number, number])[]): readonly Box[] =>
  sides.flatMap(([width, height], kind) => [
    { kind, width, height },
    { kind, width: height, height: width },
  ]);

/** The most that can be cut out, by trying every cut at every whole length. */
function byAllCuts(bin: Sides, ways: readonly Box[], prices: readonly number[]): number {
  const known = new Map<number, number>();
  const most = (width: number, height: number): number => {
    const key = width * 1_000 + height;
    const before = known.get(key);
    if (before !== undefined) return before;
    let best = 0;
    for (const way of ways) {
      if (way.width <= width && way.height <= height) best = Math.max(best, prices[way.kind] ?? 0);
    }
    for (let cut = 1; cut < width; cut += 1)
      best = Math.max(best, most(cut, height) + most(width - cut, height));
    for (let cut = 1; cut < height; cut += 1)
      best = Math.max(best, most(width, cut) + most(width, height - cut));
    known.set(key, best);
    return best;
  };
  return most(bin.width, bin.height);
}

/** Whether cuts from edge to edge free every box; boxes that overlap are never freed. */
function comesApart(boxes: readonly LaidBox[]): boolean {
  if (boxes.length <= 1) return true;
  const parts = (end: (box: LaidBox) => number, start: (box: LaidBox) => number): boolean =>
    boxes.some((box) => {
      const cut = end(box);
      const before = boxes.filter((other) => end(other) <= cut);
      const after = boxes.filter((other) => start(other) >= cut);
      const divides = after.length > 0 && before.length + after.length === boxes.length;
      return divides && comesApart(before) && comesApart(after);
    });
  return (
    parts(
      ({ x, width }) => x + width,
      ({ x }) => x,
    ) ||
    parts(
      ({ y, height }) => y + height,
      ({ y }) => y,
    )
  );
}

const isInside = (bin: Sides, { x, y, width, height }: LaidBox) =>
  x >= 0 && y >= 0 && x + width <= bin.width && y + height <= bin.height;

const worthOf = (boxes: readonly LaidBox[], prices: readonly number[]) =>
  boxes.reduce((sum, { kind }) => sum + (prices[kind] ?? 0), 0);

const side = fc.integer({ min: 2, max: 9 });
const question = fc.record({
  bin: fc.record({ width: fc.integer({ min: 4, max: 22 }), height: fc.integer({ min: 4, max: 18 }) }),
  sides: fc.array(fc.tuple(side, side), { minLength: 1, maxLength: 4 }),
  prices: fc.array(fc.integer({ min: 0, max: 60 }), { minLength: 4, maxLength: 4 }),
  mayTurn: fc.boolean(),
});

describe('the dearest boxes that straight cuts take out of a room', () => {
  it('are worth as much as trying every cut at every length gives', () => {
    fc.assert(
      fc.property(question, ({ bin, sides, prices, mayTurn }) => {
        const ways = mayTurn
          ? turning(sides)
          : sides.map(([width, height], kind) => ({ kind, width, height }));
        const { worth, boxes } = filled(bin, ways, prices);
        expect(worth).toBe(byAllCuts(bin, ways, prices));
        expect(worthOf(boxes, prices)).toBe(worth);
      }),
      cases(250),
    );
  });

  it('lie inside it and come apart by cuts from edge to edge, also where only few places for cuts are looked at', () => {
    fc.assert(
      fc.property(question, fc.integer({ min: 4, max: 30 }), ({ bin, sides, prices }, mostPoints) => {
        const { worth, boxes } = filled(bin, turning(sides), prices, mostPoints);
        expect(boxes.every((box) => isInside(bin, box))).toBe(true);
        expect(comesApart(boxes)).toBe(true);
        expect(worthOf(boxes, prices)).toBe(worth);
        expect(worth).toBeLessThanOrEqual(byAllCuts(bin, turning(sides), prices));
      }),
      cases(150),
    );
  });

  // J. Herz, IBM Journal of Research and Development 16, 462-469, 1972: instance and optimum from memory.
  it('cover 12 348 of 127 × 98 with the pieces of Herz, none turned', () => {
    const sides = [
      [18, 65],
      [24, 27],
      [21, 13],
      [36, 17],
      [54, 20],
    ] as const;
    const prices = sides.map(([width, height]) => width * height);
    const ways = sides.map(([width, height], kind) => ({ kind, width, height }));
    expect(filled({ width: 127, height: 98 }, ways, prices).worth).toBe(12_348);
  });

  // By hand: 2 × 1 boards of a pinwheel with a hole of 1 × 1 fill 3 × 3 but for the hole; straight cuts do as well.
  it('are four dominoes in a square of three', () => {
    const { worth } = filled({ width: 3, height: 3 }, turning([[2, 1]]), [1]);
    expect(worth).toBe(4);
  });

  // By hand: a pinwheel of four 3 × 2 around a hole of 1 × 1 fills 5 × 5, and no straight cut passes between them.
  it('are no more than straight cuts allow where a pinwheel holds one more', () => {
    const bin = { width: 5, height: 5 };
    expect(filled(bin, turning([[3, 2]]), [1]).worth).toBe(byAllCuts(bin, turning([[3, 2]]), [1]));
    expect(filled(bin, turning([[3, 2]]), [1]).worth).toBe(3);
  });
});

describe('places for cuts', () => {
  // By hand: sums of 3 and 5 within 10 are 0 3 5 6 8 9 10; what each leaves of 10, brought down to a sum, is
  // 10 6 5 3 0 0 0, so 8 and 9 are left out.
  it('are the sums of sides that are sums from the other end as well', () => {
    const { lengths, complete } = cutPoints(10, [3, 5], 100);
    expect([[...lengths], complete]).toEqual([[0, 3, 5, 6, 10], true]);
  });

  it('are rows of fewer sides where all are too many, and say so', () => {
    const { lengths, complete } = cutPoints(300, [20, 23, 29], 20);
    expect(lengths.length).toBeLessThanOrEqual(20);
    expect(complete).toBe(false);
  });
});
