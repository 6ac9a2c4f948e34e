import { describe, expect, it } from 'vitest';
import type { LaidBox } from '@/lib/packing/box';
import { oneSheetLess } from '@/lib/packing/few/oneSheetLess';
import { seededRandom } from '@/lib/packing/seededRandom';

const bin = { width: 10, height: 10, mayTurn: true };

/** The worst layout: each box on a sheet of its own. */
function search(sides: readonly (readonly [number, number])[], least: number, steps = 200_000) {
  const kinds = sides.map(([width, height]) => ({ width, height, count: 1, mayTurn: true }));
  let best: readonly (readonly LaidBox[])[] = sides.map(([width, height], kind) => [
    { kind, x: 0, y: 0, width, height },
  ]);
  const work = { steps };
  const random = seededRandom(1);
  for (;;) {
    const slices = oneSheetLess({ bin, kinds, best, least }, work, random);
    let slice = slices.next();
    while (slice.done !== true) slice = slices.next();
    if (slice.value === null) return { best, work };
    best = slice.value;
  }
}

describe('the search for one sheet less', () => {
  it('goes from a sheet for each box down to the bound, a sheet at a time', () => {
    // By hand: 7 × 10 with 3 × 10, and 6 × 10 with two of 4 × 5, fill two sheets.
    const { best } = search(
      [
        [7, 10],
        [3, 10],
        [6, 10],
        [4, 5],
        [5, 4],
      ],
      2,
    );
    expect(best).toHaveLength(2);
    expect(
      best
        .flat()
        .map(({ kind }) => kind)
        .sort(),
    ).toEqual([0, 1, 2, 3, 4]);
  });

  it('stops at the end of its work where there is no such layout', () => {
    // Three boxes over half a sheet both ways never share one; the bound given is too low on purpose.
    const { best, work } = search(
      [
        [6, 6],
        [6, 6],
        [6, 6],
      ],
      1,
      20_000,
    );
    expect(best).toHaveLength(3);
    expect(work.steps).toBeLessThanOrEqual(0);
  });

  it('does nothing at the bound', () => {
    const { work } = search(
      [
        [6, 6],
        [6, 6],
      ],
      2,
      1_000,
    );
    expect(work.steps).toBe(1_000);
  });
});
