import { describe, expect, it } from 'vitest';
import { formulaWords, type Term } from '@/app/_trace/formulaWords';
import { traceFigure } from '@/lib/grid/traceFigure';
import { club, clubWith } from '@/tests/fixtures/clubJob';
import { costed } from '@/tests/fixtures/costed';

const { sheet } = costed(club());

const spoken = ({ sign, phrases }: Term): string =>
  [
    sign,
    ...phrases.map((phrase) => {
      switch (phrase.kind) {
        case 'chip':
          return `[${phrase.part.label}]`;
        case 'words':
          return phrase.text;
        case 'number':
          return String(phrase.value);
        default:
          return phrase.side === 'open' ? '(' : ')';
      }
    }),
  ]
    .filter((word) => word !== '')
    .join(' ');

const said = (rowId: string, at?: number, of = sheet) =>
  formulaWords(traceFigure(of, at === undefined ? { rowId } : { rowId, case: at })?.parts ?? []).map(spoken);

describe('a formula in words', () => {
  it('is × ÷ − and no brackets where none are needed', () => {
    expect(said('labour', 2)).toEqual(['[Paid time, nothing spoiled] ÷ 60 × [Your pay]']);
    expect(said('profit', 2)).toEqual(['[Price without tax] − [Fees] − [Full cost]']);
    expect(said('margin')).toEqual(['[Profit] ÷ [Price without tax]']);
  });

  it('keeps the brackets that matter', () => {
    expect(said('target', 2)).toEqual([
      '( [Full cost] + [Fixed card fees] ) ÷ [What of the price is left for cost]',
    ]);
  });

  it('holds each summand apart, differences in brackets', () => {
    expect(said('spoilage', 2).slice(0, 2)).toEqual([
      '( [Blanks with freight, expected use] − [Blanks with freight] )',
      '+ ( [Sheets, expected use] − [Sheets] )',
    ]);
  });

  it('says “rounded up” for ROUNDUP', () => {
    expect(said('fullSheets_2', 2)).toEqual([
      '[Placement 2 is pressed] × ( [Pieces sharing print size 2] ÷ [Prints 2 on a sheet] rounded up ) ÷ [Pieces sharing print size 2]',
    ]);
  });

  it('tells only the branch of an IF that was taken, and why', () => {
    expect(said('sessions')).toEqual(['1 because [Pieces a session can carry] is not more than 0']);
    const two = costed(clubWith({ 'job.piecesPerSession': 20 })).sheet;
    expect(said('sessions', undefined, two)).toEqual([
      '( [Good pieces in the job] ÷ [Pieces a session can carry] rounded up ) because [Pieces a session can carry] is more than 0',
    ]);
    expect(said('price', 2)).toEqual([
      '[Asked price as typed] ÷ ( 1 + [Tax is inside typed prices] × [Tax] ) because [Asked price as typed] is more than 0',
    ]);
  });

  it('says “the larger of” for MAX', () => {
    expect(said('printerWear')).toEqual([
      'the larger of ( [Printer price] − [Printer resale] ) ÷ [Sheets in the printer’s life] and ( 0 because [Years in the printer’s life] × [Sheets printed in a year] is not more than 0 )',
    ]);
  });

  it('leaves no row of the grid without words', () => {
    for (const row of sheet.rows.filter(({ formula }) => formula !== null)) {
      const ref =
        row.table === 'case'
          ? { rowId: row.id, case: 0 }
          : row.table === 'line'
            ? { rowId: row.id, line: 0 }
            : { rowId: row.id };
      const text = formulaWords(traceFigure(sheet, ref)?.parts ?? [])
        .map(spoken)
        .join(' ');
      expect(text, row.id).not.toMatch(/[*/;]|\b[A-Z]{2,}\b|^$/);
    }
  });
});
