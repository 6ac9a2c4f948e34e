import { describe, expect, it } from 'vitest';
import { usableNames } from '@/lib/grid/usableNames';
import type { OwnRow } from '@/shared/schemas/ownRow';

describe('usableNames', () => {
  const own: OwnRow = {
    id: 'own_fee',
    label: 'Fee',
    outOfPocket: true,
    cost: { kind: 'formula', formula: 'wage' },
  };
  const ids = usableNames([own], 2).map(({ id }) => id);

  it('offers rates, values of the line and rows of a piece', () => {
    expect(ids).toEqual(expect.arrayContaining(['wage', 'scrap_2', 'blanks', 'inkMl', 'attended']));
  });

  it('leaves out what would lead back: the own rows and all that stands on them', () => {
    for (const id of ['own_fee', 'ownCosts', 'ownCash', 'fullCost', 'cash', 'target', 'profit'])
      expect(ids).not.toContain(id);
  });
});
