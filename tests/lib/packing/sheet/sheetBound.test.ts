import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dualFeasible } from '@/lib/packing/dualFeasible';
import { rollBound } from '@/lib/packing/roll/rollBound';
import { sheetBound } from '@/lib/packing/sheet/sheetBound';
import { cases } from '@/tests/tools/cases';

const box = (width: number, height: number, count = 1, mayTurn = true) => ({ width, height, count, mayTurn });

describe('the measures of the bounds', () => {
  it('give sides that fit beside each other no more than 1 together', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 200 }),
        fc.array(fc.nat(200), { maxLength: 12 }),
        (bin, drawn) => {
          const sides: number[] = [];
          let left = bin;
          for (const side of drawn.map((number) => 1 + (number % bin))) {
            if (side <= left) {
              sides.push(side);
              left -= side;
            }
          }
          for (const measure of dualFeasible(bin, sides)) {
            expect(sides.reduce((sum, side) => sum + measure(side), 0)).toBeLessThanOrEqual(1 + 1e-9);
          }
        },
      ),
      cases(300),
    );
  });
});

describe('the bound on sheets', () => {
  it.each([
    ['area', [box(5, 10, 3)], 2],
    ['boxes over half the sheet both ways', [box(6, 6, 4)], 4],
    ['boxes over half of one way that may not turn', [box(6, 3, 7, false)], 3],
    ['one large and one small box on each', [box(7, 7, 2), box(4, 4, 2)], 3],
    ['a single speck', [box(1, 1)], 1],
  ])('sees %s', (_, kinds, least) => {
    expect(sheetBound({ width: 10, height: 10 }, kinds)).toBe(least);
  });
});

describe('the bound on a roll', () => {
  it.each([
    ['area', [box(5, 4, 5)], 10],
    ['the longest box', [box(12, 3, 1)], 12],
    ['boxes that do not lie side by side', [box(6, 6, 3)], 18],
    ['that lengths are multiples of what measures every side', [box(4, 4, 3), box(6, 6, 1)], 10],
  ])('sees %s', (_, kinds, least) => expect(rollBound(10, kinds)).toBe(least));
});
