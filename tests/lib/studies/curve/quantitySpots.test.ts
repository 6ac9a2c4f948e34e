import { describe, expect, it } from 'vitest';
import { quantitySpots } from '@/lib/studies/curve/quantitySpots';
import { club, clubWith, mugs } from '@/tests/fixtures/clubJob';
import { costed, grid } from '@/tests/fixtures/costed';

describe('quantitySpots', () => {
  it('asks for 40 shirts instead of 37: three more cost 25.67 in total', () => {
    const [spot] = quantitySpots(costed(club()), grid);
    expect(spot?.n).toBe(40);
    expect(spot?.reasons).toEqual([{ kind: 'sheet', lineId: 'shirts', placementId: 'badge', print: 0 }]);
    expect(Math.abs((spot?.addedCost ?? 0) - 25.67)).toBeLessThan(0.02);
  });

  it('gives the next three: badges go four to a sheet', () => {
    expect(quantitySpots(costed(club()), grid).map(({ n }) => n)).toEqual([40, 44, 48]);
  });

  it('names a session that is just full beside a sheet that is', () => {
    const spots = quantitySpots(costed(clubWith({ 'job.piecesPerSession': 20 })), grid, 1);
    expect(spots[0]?.n).toBe(40);
    expect(spots[0]?.reasons.map(({ kind }) => kind)).toEqual(['sheet', 'session']);
  });

  it('names a pack that is just used up, in pieces of its own size', () => {
    const packed = costed(clubWith({ 'blank:white-shirt.sizes.2.packSize': 12 }));
    // Eleven L shirts are ordered; the twelfth comes in the same pack.
    expect(quantitySpots(packed, grid, 1)).toMatchObject([
      { n: 38, reasons: [{ kind: 'pack', size: 'L', packSize: 12 }] },
    ]);
  });

  it('looks at the strips of every line: twelve mugs of each design fill their sheets', () => {
    // 36 mugs in three equal lines, three strips to a sheet: 9, 18, … more fill all of them.
    expect(quantitySpots(costed(mugs()), grid, 2).map(({ n }) => n)).toEqual([45, 54]);
  });
});
