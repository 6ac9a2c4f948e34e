import { describe, expect, it } from 'vitest';
import { withCell, withColumn } from '@/lib/names/namesTable';
import { previewNames } from '@/lib/names/previewNames';
import { readNames } from '@/lib/names/readNames';

const SIZES = ['S', 'M', 'L', 'XL', '2XL'];
const read = (text: string, sizes = SIZES) => previewNames(readNames(text, sizes), sizes).rows;
const short = (text: string, sizes = SIZES) =>
  read(text, sizes).map(({ name, size, number }) => [name, size, number]);

const three = [
  ['Ana Silva', 'L', '7'],
  ['Bo', 'M', '12'],
  ['Cy', '2XL', '3'],
];

describe('the same three people, however they come', () => {
  it.each([
    ['a spreadsheet', 'Name\tSize\tNumber\nAna Silva\tL\t7\nBo\tM\t12\nCy\t2XL\t3'],
    ['a spreadsheet without heads, columns the other way', '7\tL\tAna Silva\n12\tM\tBo\n3\t2XL\tCy'],
    ['a file with commas', 'Player name,T-shirt size,No.\r\nAna Silva,L,7\r\nBo,M,12\r\nCy,2XL,3\r\n'],
    [
      'a file with semicolons that says so',
      'sep=;\r\nNombre;Talla;Dorsal\r\nAna Silva;L;7\r\nBo;M;12\r\nCy;2XL;3',
    ],
    ['first and last name apart', 'first name,last name,size,#\nAna,Silva,L,7\nBo,,M,12\nCy,,2XL,3'],
    [
      'a table of a page',
      '| Name | Size | No |\n|---|:-:|---|\n| Ana Silva | L | 7 |\n| Bo | M | 12 |\n| Cy | 2XL | 3 |',
    ],
    ['a message', 'Ana Silva – L – 7\nBo - M - 12\nCy - 2XL - 3'],
    ['a list', '1. Ana Silva L 7\n2. Bo M 12\n3. Cy 2XL 3'],
    ['words with a mark apart from its number', 'Ana Silva L # 7\nBo M # 12\nCy 2XL # 3'],
    ['words alone', 'Ana Silva L #7\nBo 12 M\n3 2XL Cy'],
    ['lines of a list with marks', '• Ana Silva: L: 7\n• Bo: M: 12\n• Cy: XXL: 3'],
  ])('%s', (_, text) => expect(short(text)).toEqual(three));
});

describe('readNames', () => {
  it('knows a size of several words by the blank’s own, in a message too', () => {
    const sizes = ['Age 7', 'Age 9'];
    const { rows } = previewNames(readNames('Ana Silva Age 7\nBo Age 9 12', sizes), sizes);
    expect(rows.map(({ name, size, number }) => [name, size, number])).toEqual([
      ['Ana Silva', 'Age 7', ''],
      ['Bo', 'Age 9', '12'],
    ]);
  });

  it('keeps commas in names where semicolons or tabs part the cells', () => {
    expect(short('Silva, Ana;L\nBerg, Bo;M')).toEqual([
      ['Silva, Ana', 'L', ''],
      ['Berg, Bo', 'M', ''],
    ]);
  });

  it('keeps names of any script as they are written', () => {
    const names = ['Νίκος Παπαδόπουλος', 'Nguyễn Thị Ánh', 'דנה כהן', '李小龍', 'محمد', "O'Neill-Müller"];
    expect(short(names.map((name) => `${name}\tM`).join('\n')).map(([name]) => name)).toEqual(names);
  });

  it('names the columns of which nothing is taken', () => {
    const table = readNames('Name,Email,Size\nAna,ana@example.org,L', SIZES);
    expect(previewNames(table, SIZES).notTaken).toEqual([{ column: 1, shows: 'Email' }]);
  });

  it('takes another column or another text where the maker says so', () => {
    const table = readNames('Ana\tSilva\tL\nBo\tBerg\tX', SIZES);
    expect(table.columns).toEqual(['name', 'nothing', 'size']);
    const mended = withCell(withColumn(table, 1, 'name'), 2, 2, 'M');
    expect(previewNames(mended, SIZES).rows.map(({ name, size }) => [name, size])).toEqual([
      ['Ana Silva', 'L'],
      ['Bo Berg', 'M'],
    ]);
  });

  it('takes the one size of a blank that has but one, and says so', () => {
    const [row] = read('Ana\nBo', ['11 oz']);
    expect(row).toMatchObject({ name: 'Ana', size: '11 oz', understood: [{ code: 'onlySize' }], faults: [] });
  });

  it('reads a column of pieces by its head', () => {
    expect(read('Name,Size,Qty\nAna,L,2\nBo,M,')).toMatchObject([{ pieces: 2 }, { pieces: 1 }]);
    expect(read('Name,Size,Qty\nAna,L,some')[0]?.faults).toEqual([{ code: 'noCount', asWritten: 'some' }]);
  });

  it('is no row lost of an empty or unfinished text', () => {
    expect(short('')).toEqual([]);
    expect(short('   \n\n')).toEqual([]);
    expect(short('Ana')).toEqual([['Ana', '', '']]);
  });
});
