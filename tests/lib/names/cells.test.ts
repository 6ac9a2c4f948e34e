import { describe, expect, it } from 'vitest';
import { cellsOf } from '@/lib/names/cells';

const cellsIn = (text: string, separator = ',') => cellsOf(text, separator).rows.map(({ cells }) => cells);

describe('cellsOf, by the definitions of RFC 4180, section 2', () => {
  it.each<[string, string, readonly (readonly string[])[]]>([
    [
      '1: each record on its own line',
      'aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      '2: the last may have no line end',
      'aaa,bbb,ccc\r\nzzz,yyy,xxx',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    ['4: spaces are part of a field', 'a , b', [['a ', ' b']]],
    [
      '5: fields may be in quotes',
      '"aaa","bbb","ccc"\r\nzzz,yyy,xxx',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      '6: line ends and commas in quotes',
      '"aaa","b\r\nb,b","ccc"\r\nzzz,yyy,xxx',
      [
        ['aaa', 'b\r\nb,b', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    ['7: a quote is doubled', '"aaa","b""bb","ccc"', [['aaa', 'b"bb', 'ccc']]],
  ])('%s', (_, text, rows) => expect(cellsIn(text)).toEqual(rows));

  it.each<[string, string, readonly (readonly string[])[]]>([
    [
      'lines that end otherwise',
      'a,b\nc,d\re,f',
      [
        ['a', 'b'],
        ['c', 'd'],
        ['e', 'f'],
      ],
    ],
    ['a quote within a cell', 'Bo 5" tall,L', [['Bo 5" tall', 'L']]],
    ['signs behind a closing quote', '"Ana" Silva,L', [['Ana Silva', 'L']]],
    ['an empty cell at the end', 'a,\r\n', [['a', '']]],
    [
      'empty rows, which are none',
      'a,b\r\n\r\n,\r\nc,d',
      [
        ['a', 'b'],
        ['c', 'd'],
      ],
    ],
  ])('takes as it stands what the standard does not know: %s', (_, text, rows) =>
    expect(cellsIn(text)).toEqual(rows),
  );

  it('tells the line each row begins on, with line ends in cells counted', () => {
    const { rows } = cellsOf('"a\nb",c\r\nd,e\r\n\r\nf,g', ',');
    expect(rows.map(({ line }) => line)).toEqual([1, 3, 5]);
  });

  it('keeps a quote that never closes as a sign, loses no row behind it, and tells its line', () => {
    const { rows, openQuotes } = cellsOf('Ana,L\n"Bo,M\nCy,S', ',');
    expect(rows.map(({ cells }) => cells)).toEqual([
      ['Ana', 'L'],
      ['"Bo', 'M'],
      ['Cy', 'S'],
    ]);
    expect(openQuotes).toEqual([2]);
  });
});
