import { describe, expect, it } from 'vitest';
import { costGroups, groupShares, withCostGroups } from '@/lib/grid/costGroups';
import { costLineIds } from '@/lib/grid/costLines';
import { traceFigure } from '@/lib/grid/traceFigure';
import { club } from '@/tests/fixtures/clubJob';
import { costed } from '@/tests/fixtures/costed';

const { sheet } = costed(club());

describe('groups of cost lines', () => {
  it('hold every line once', () => {
    expect(costGroups.flatMap(({ lines }) => lines).toSorted()).toEqual([...costLineIds].toSorted());
  });

  it('put the dearest first and add to the whole', () => {
    const shares = groupShares(sheet);
    // Blanks with freight of the worked example: 188.20 of 411.79.
    expect(shares[0]).toMatchObject({ id: 'blanks' });
    expect(shares[0]?.share).toBeCloseTo(188.2 / 411.79, 4);
    expect(shares.map(({ id }) => id)).toEqual([
      'blanks',
      'time',
      'overhead',
      'loss',
      'sheets',
      'packing',
      'running',
    ]);
    expect(shares.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
  });

  it('share nothing out where nothing costs anything', () => {
    const none = Object.fromEntries(
      Object.keys(sheet.values).map((id) => [id, sheet.cases.map(() => 0).concat(0)]),
    );
    expect(groupShares({ ...sheet, values: none, fullCost: 0 })).toEqual([]);
  });

  it('open to their lines, for a piece and for the whole job', () => {
    for (const at of [{}, { case: 0 }]) {
      const opened = traceFigure(withCostGroups(sheet), { rowId: 'group_sheets', ...at });
      const lines = opened?.parts.flatMap((part) => (part.kind === 'operand' ? [part] : [])) ?? [];
      expect(lines.map(({ ref }) => ref.rowId)).toEqual(['paper', 'ink', 'supplies']);
      expect(lines.reduce((sum, { value }) => sum + value, 0)).toBeCloseTo(opened?.value ?? Number.NaN, 9);
    }
  });
});
