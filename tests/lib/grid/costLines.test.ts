import { describe, expect, it } from 'vitest';
import { cashLines, costLineIds, everyLine, spoiledLines } from '@/lib/grid/costLines';
import { expandRows } from '@/lib/grid/expandRows';
import { namesIn } from '@/lib/grid/tokenizeFormula';

describe('the cost lines', () => {
  const { byId } = expandRows({ placements: 1, presses: 1, ownRows: [] });

  it('are thirteen, each a row of the grid that adds', () => {
    expect(costLineIds).toHaveLength(13);
    expect(costLineIds.map((id) => byId.get(id)?.total)).toEqual(costLineIds.map(() => 'adds'));
  });

  it('add to full cost', () => {
    expect(byId.get('fullCost')?.formula).toBe(everyLine);
    expect(everyLine).toBe(
      'blanks + paper + ink + supplies + electricity + wear + labour + overhead + packaging + delivery + ownCosts + spoilage + reprints',
    );
  });

  it('spoil where more is used than the baseline: not packaging, which only good pieces get', () => {
    expect(byId.get('spoilage')?.formula).toBe(spoiledLines);
    expect(spoiledLines).toMatch(/^\(blanksExpected - blanks\) \+ .* \+ \(overheadExpected - overhead\)$/);
    expect(spoiledLines.split(' + ')).toHaveLength(8);
    expect(spoiledLines).not.toContain('packaging');
  });

  it('leave the pocket but for pay, overhead and wear', () => {
    expect(byId.get('cash')?.formula).toBe(cashLines);
    expect(cashLines).toBe(
      'blanksExpected + paperExpected + inkExpected + suppliesExpected + electricityExpected + packaging + delivery + ownCash',
    );
  });

  it('name rows of the grid only', () => {
    for (const name of [everyLine, spoiledLines, cashLines].flatMap((formula) => [...namesIn(formula)])) {
      expect(byId.has(name), name).toBe(true);
    }
  });
});
