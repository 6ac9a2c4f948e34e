import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { placeInBox } from '@/lib/artwork/placeInBox';
import { cases } from '@/tests/tools/cases';

const square = { widthMm: 254, heightMm: 254 };
const wide = { width: 3000, height: 1500 };

describe('placeInBox', () => {
  it('inside keeps every pixel and leaves strips', () => {
    expect(placeInBox(wide, square, 'inside')).toEqual({
      crop: { x: 0, y: 0, width: 3000, height: 1500 },
      widthMm: 254,
      heightMm: 127,
      boxShare: 0.5,
      ppi: 300,
    });
  });
  it('fill cuts the longer way from both edges', () => {
    expect(placeInBox(wide, square, 'fill')).toEqual({
      crop: { x: 750, y: 0, width: 1500, height: 1500 },
      widthMm: 254,
      heightMm: 254,
      boxShare: 1,
      ppi: 150,
    });
  });
  it('stretch tells the lesser density of the two ways', () => {
    expect(placeInBox(wide, square, 'stretch')).toMatchObject({ boxShare: 1, ppi: 150 });
  });
  it('stays inside the picture and the box, whatever their shapes', () => {
    const side = fc.integer({ min: 2, max: 9000 });
    const length = fc.double({ min: 5, max: 900, noNaN: true });
    fc.assert(
      fc.property(
        side,
        side,
        length,
        length,
        fc.constantFrom('inside', 'fill'),
        (width, height, w, h, fit) => {
          const { crop, ...print } = placeInBox({ width, height }, { widthMm: w, heightMm: h }, fit);
          expect(crop.x + crop.width).toBeLessThanOrEqual(width);
          expect(crop.y + crop.height).toBeLessThanOrEqual(height);
          expect(Math.min(crop.x, crop.y, crop.width - 1, crop.height - 1)).toBeGreaterThanOrEqual(0);
          expect(print.widthMm).toBeLessThanOrEqual(w * (1 + 1e-12));
          expect(print.heightMm).toBeLessThanOrEqual(h * (1 + 1e-12));
          expect(print.boxShare).toBeLessThanOrEqual(1 + 1e-12);
        },
      ),
      cases(500),
    );
  });
});
