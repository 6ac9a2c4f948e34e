import { describe, expect, it } from 'vitest';
import { placementOfPicture } from '@/lib/artwork/placementOfPicture';
import { aPicture } from '@/tests/fixtures/aPicture';

const square = aPicture({ width: 1000, height: 1000, content: { x: 0, y: 0, width: 1000, height: 1000 } });
const tall = { widthMm: 100, heightMm: 200 };

describe('a picture in the box of its print', () => {
  it('leaves bare cloth beside it when fitted inside', () => {
    const { bareMm, cutMm, ppi } = placementOfPicture(square, tall, 'inside');
    expect(bareMm).toEqual({ across: 0, down: 100 });
    expect(cutMm).toEqual({ across: 0, down: 0 });
    expect(ppi).toBeCloseTo(254, 9);
  });

  it('loses what is cut off when it fills the box, in the size it is printed at', () => {
    const { bareMm, cutMm, ppi } = placementOfPicture(square, tall, 'fill');
    expect(bareMm).toEqual({ across: 0, down: 0 });
    expect(cutMm.across).toBeCloseTo(100, 9);
    expect(cutMm.down).toBe(0);
    expect(ppi).toBeCloseTo(127, 9);
  });

  it('tells what clear edges take, and the size without them', () => {
    const edged = { ...square, content: { x: 100, y: 0, width: 800, height: 900 } };
    const { clearMm, trimmedMm } = placementOfPicture(edged, { widthMm: 100, heightMm: 100 }, 'inside');
    expect(clearMm?.across).toBeCloseTo(20, 9);
    expect(clearMm?.down).toBeCloseTo(10, 9);
    expect(trimmedMm?.width).toBeCloseTo(80, 9);
    expect(trimmedMm?.height).toBeCloseTo(90, 9);
  });

  it.each([
    [980, 'inside', true],
    [981, 'inside', false],
    [500, 'fill', false],
  ] as const)('content %d px wide of 1000, %s: worth trimming %s', (width, fit, isWorthIt) => {
    const edged = { ...square, content: { x: 0, y: 0, width, height: 1000 } };
    const { clearMm } = placementOfPicture(edged, { widthMm: 100, heightMm: 100 }, fit);
    expect(clearMm !== null).toBe(isWorthIt);
  });

  it('has no edges to trim where nothing is in it', () => {
    const empty = { ...square, content: null };
    expect(placementOfPicture(empty, { widthMm: 100, heightMm: 100 }, 'inside').clearMm).toBeNull();
  });
});
