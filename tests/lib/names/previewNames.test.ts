import { describe, expect, it } from 'vitest';
import { nameCounts } from '@/lib/names/nameCounts';
import { previewNames } from '@/lib/names/previewNames';
import { readNames } from '@/lib/names/readNames';
import { takeNames } from '@/lib/names/takeNames';

const SIZES = ['S', 'M', 'L', 'XL', '2XL'];
const preview = (text: string) => previewNames(readNames(text, SIZES), SIZES);
const faults = (text: string) => preview(text).rows.map((row) => row.faults);
const counter = () => {
  let ids = 0;
  return () => {
    ids += 1;
    return `r${ids}`;
  };
};

describe('faults of a row', () => {
  it.each<[string, string, unknown]>([
    ['no name', ',L,7', { code: 'noName' }],
    ['no size', 'Zoe,,7', { code: 'noSize' }],
    [
      'a size the blank is not made in',
      'Zoe,5XL,7',
      { code: 'unknownSize', asWritten: '5XL', nearest: '2XL' },
    ],
    [
      'two sizes in one cell',
      'Zoe,M/L,7',
      {
        code: 'severalSizes',
        asWritten: 'M/L',
        sizes: [
          { size: 'M', pieces: 1 },
          { size: 'L', pieces: 1 },
        ],
      },
    ],
    ['a number that is none', 'Zoe,L,seven', { code: 'noNumber', asWritten: 'seven' }],
    ['more cells than columns', 'Zoe,L,7,red', undefined],
    ['the same person, written in capitals', 'ANA,L,7', { code: 'samePerson', lines: [2] }],
    ['a name over the end of a line', '"Zoe\nBo",L,7', { code: 'lineBreaks' }],
  ])('%s', (_, row, fault) => {
    const [, , , last] = faults(`name,size,number\nAna,S,1\nBea,M,2\nCy,XL,3\n${row}`);
    expect(last ?? []).toEqual(fault === undefined ? [] : [fault]);
  });

  it('tells a size by its column of the whole text too, not only in a table', () => {
    expect(preview('Ana – 5XL').rows[0]).toMatchObject({ name: 'Ana', size: '5XL' });
  });

  it('tells somebody who is in the order already', () => {
    const table = readNames('Ana,L\nBo,M', SIZES);
    const already = [{ id: 'x', name: 'ana', size: 'S', number: '' }];
    expect(previewNames(table, SIZES, already).rows.map((row) => row.faults)).toEqual([
      [{ code: 'samePerson', lines: [0] }],
      [],
    ]);
  });

  it('tells two ways of composing a letter as the same person', () => {
    expect(faults('José,L\nJose\u0301,M').flat()).toHaveLength(2);
  });

  it('keeps a very long name and takes it once it is shorter', () => {
    const name = 'Ana '.repeat(60).trim();
    const { rows } = preview(`${name},L`);
    expect(rows[0]?.name).toBe(name);
    expect(rows[0]?.faults).toEqual([{ code: 'tooLong', part: 'name', letters: 239, most: 160 }]);
    expect(takeNames({ rows }, counter())).toMatchObject({ rows: [], left: [{ name }] });
  });
});

describe('500 names pasted with three faults', () => {
  const lines = Array.from({ length: 500 }, (_, at) => `Person ${at + 1}\t${SIZES[at % 5]}\t${at % 100}`);
  const text = ['Name\tSize\tNumber', ...lines]
    .with(100, '\tM\t99')
    .with(200, 'Person 200\t7XL\t99')
    .with(300, 'Person 1\t2XL\t99')
    .join('\r\n');

  it('shows all of them, the faults by row, and takes every one as it stands', () => {
    const shown = preview(text);
    expect(shown.rows).toHaveLength(500);
    expect(shown.isMany).toBe(false);
    expect(shown.rows.flatMap(({ line, faults: own }) => own.map(({ code }) => [line, code]))).toEqual([
      [2, 'samePerson'],
      [101, 'noName'],
      [201, 'unknownSize'],
      [301, 'samePerson'],
    ]);
    const { rows, left } = takeNames(shown, counter());
    expect(left).toEqual([]);
    expect(rows[199]).toEqual({ id: 'r200', name: 'Person 200', size: '7XL', number: '99' });
    // 500 in fives are 100 of each; line 101 was of 2XL before, line 201 and 301 too.
    expect(nameCounts(rows, SIZES)).toEqual({
      sizes: [
        { size: 'S', quantity: 100 },
        { size: 'M', quantity: 101 },
        { size: 'L', quantity: 100 },
        { size: 'XL', quantity: 100 },
        { size: '2XL', quantity: 98 },
      ],
      unknown: [{ size: '7XL', quantity: 1 }],
      withoutSize: 0,
    });
  });

  it('tells more than 500, and from the 2,001st that an order holds no more', () => {
    const many = Array.from({ length: 2_003 }, (_, at) => `Person ${at}\tM`).join('\n');
    const shown = preview(many);
    expect(shown).toMatchObject({ isMany: true, pieces: 2_003 });
    const { rows, left } = takeNames(shown, counter());
    expect(rows).toHaveLength(2_000);
    expect(left.map(({ line }) => line)).toEqual([2_001, 2_002, 2_003]);
    expect(left[0]?.faults).toEqual([{ code: 'overMost', most: 2_000 }]);
  });
});

describe('takeNames', () => {
  it('makes a row for each piece of “2 x L”, and leaves out what the maker does not want', () => {
    const { rows } = takeNames(preview('Ana,2 x L\nBo,M\nCy,S'), counter(), new Set([2]));
    expect(rows.map(({ name, size }) => [name, size])).toEqual([
      ['Ana', 'L'],
      ['Ana', 'L'],
      ['Cy', 'S'],
    ]);
  });
});
