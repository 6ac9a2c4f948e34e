import { describe, expect, it } from 'vitest';
import { costShares } from '@/lib/grid/costShares';
import { club } from '@/tests/fixtures/clubJob';
import { costed } from '@/tests/fixtures/costed';

const { sheet } = costed(club());

describe('costShares', () => {
  it('puts the largest first and adds to the whole', () => {
    const shares = costShares(sheet);
    expect(shares[0]).toMatchObject({ rowId: 'blanks' });
    expect(shares[0]?.share).toBeCloseTo(188.2 / 411.79, 4);
    expect(shares.map(({ share }) => share)).toEqual(
      shares.map(({ share }) => share).toSorted((a, b) => b - a),
    );
    expect(shares.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
  });

  it('has nothing to share out where nothing costs anything', () => {
    expect(costShares({ ...sheet, fullCost: 0 })).toEqual([]);
  });
});
