import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { placeLabels } from '@/app/_ruler/placeLabels';

describe('placeLabels', () => {
  it('leaves labels at their ticks where there is room', () => {
    const labels = [
      { ratio: 0.25, widthPx: 80 },
      { ratio: 0.75, widthPx: 80 },
    ];
    expect(placeLabels(labels, 400)).toEqual([100, 300]);
  });

  it('moves two that would touch apart by the same amount', () => {
    const labels = [
      { ratio: 0.5, widthPx: 80 },
      { ratio: 0.5, widthPx: 80 },
    ];
    expect(placeLabels(labels, 400)).toEqual([160, 240]);
  });

  it('keeps labels on the row at both ends', () => {
    expect(placeLabels([{ ratio: 0, widthPx: 80 }], 400)).toEqual([40]);
    expect(placeLabels([{ ratio: 1, widthPx: 80 }], 400)).toEqual([360]);
  });

  it('gives up where the row is too short', () => {
    expect(placeLabels([{ ratio: 0.5, widthPx: 80 }], 79)).toBeNull();
  });

  it('never lets labels touch, leave the row or change their order', () => {
    const label = fc.record({
      ratio: fc.double({ min: 0, max: 1, noNaN: true }),
      widthPx: fc.integer({ min: 20, max: 110 }),
    });
    fc.assert(
      fc.property(fc.array(label, { maxLength: 7 }), fc.integer({ min: 300, max: 1000 }), (given, rowPx) => {
        const labels = given.toSorted((a, b) => a.ratio - b.ratio);
        const middles = placeLabels(labels, rowPx);
        if (!middles) return;
        let end = 0;
        labels.forEach(({ widthPx }, at) => {
          const middle = middles[at] ?? Number.NaN;
          expect(middle - widthPx / 2).toBeGreaterThanOrEqual(end - 1e-6);
          end = middle + widthPx / 2;
        });
        expect(end).toBeLessThanOrEqual(rowPx + 1e-6);
      }),
    );
  });
});
