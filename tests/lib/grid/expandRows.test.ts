import { describe, expect, it } from 'vitest';
import { caseValue, UnknownFigure, wholeJob } from '@/lib/grid/costSheet';
import { expandRows } from '@/lib/grid/expandRows';
import { namesIn } from '@/lib/grid/tokenizeFormula';
import { costed } from '@/tests/fixtures/costed';
import { plainJob } from '@/tests/fixtures/plainJob';

const rowsOf = (placements: number, presses: number) => expandRows({ placements, presses, ownRows: [] });
const formulaOf = (placements: number, presses: number, id: string) =>
  rowsOf(placements, presses).byId.get(id)?.formula;

describe('rows written out for a job', () => {
  it.each([
    // Placements, presses, row, formula.
    [1, 1, 'enter_1', '1 / (1 - scrap_1)'],
    [2, 1, 'enter_1', 'enter_2 / (1 - scrap_1)'],
    [2, 1, 'enter_2', '1 / (1 - scrap_2)'],
    [2, 1, 'presses', '(presses_1 + presses_2)'],
    [3, 1, 'presses', '(presses_1 + presses_2 + presses_3)'],
    [1, 2, 'warmUpMinutes', '(warmMinutes_1 + warmMinutes_2)'],
    [
      2,
      1,
      'sheets',
      '((sheetsRun_1 + testsShared_1 * sheetWorth_1) + (sheetsRun_2 + testsShared_2 * sheetWorth_2))',
    ],
  ])('%d placement(s), %d press(es): %s is %s', (placements, presses, id, formula) => {
    expect(formulaOf(placements, presses, id)).toBe(formula);
  });

  it('name nothing that is not a row, in any shape', () => {
    for (const placements of [1, 2, 3, 4])
      for (const presses of [1, 2, 3]) {
        const { byId } = rowsOf(placements, presses);
        const named = [...byId.values()].flatMap(({ formula }) => (formula === null ? [] : namesIn(formula)));
        expect(named.filter((name) => !byId.has(name))).toEqual([]);
      }
  });

  it('have no mark of repetition left', () => {
    for (const row of rowsOf(4, 3).byId.values()) {
      expect(`${row.id} ${row.label} ${row.says} ${row.formula}`).not.toMatch(/#/);
    }
  });

  it('have a name of their own each', () => {
    const { job, line, case: cases, byId } = rowsOf(4, 3);
    expect(byId.size).toBe(job.length + line.length + cases.length);
  });
});

describe('a figure that is not there', () => {
  const { sheet } = costed(plainJob({ sizes: [{ quantity: 2, blank: 3 }] }));

  it.each([
    ['a row that is not there', () => wholeJob(sheet, 'nothing')],
    ['a row without a whole-job value', () => wholeJob(sheet, 'blankPrice')],
    ['a size that is not there', () => caseValue(sheet, 'blanks', 7)],
  ])('is an error of its own: %s', (_, read) => {
    expect(read).toThrow(UnknownFigure);
  });
});
