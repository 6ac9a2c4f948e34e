import { describe, expect, it } from 'vitest';
import { nameListDifferences, nameListText, rowsOfNameList } from '@/lib/names/nameListText';

const row = (id: string, name: string, size: string, number = '') => ({ id, name, size, number });
const rows = [row('a', 'Ana', 'L', '7'), row('b', 'Bo', 'M'), row('c', '', 'S', '12'), row('d', '', 'S')];
const newId = () => 'new';

describe('the list of names to be printed', () => {
  it('has a line for each row that bears something, with its number behind the name', () => {
    expect(nameListText(rows)).toBe('Ana 7\nBo\n12');
  });

  it('finds the rows again with their sizes, and reads what is new', () => {
    expect(rowsOfNameList('Ana 7\nBo\n12\n\nCy 9\nDee', rows, newId)).toEqual([
      rows[0],
      rows[1],
      rows[2],
      row('new', 'Cy', '', '9'),
      row('new', 'Dee', ''),
    ]);
  });

  it('gives each row once, however often a line stands there', () => {
    expect(rowsOfNameList('Bo\nBo', rows, newId).map(({ id }) => id)).toEqual(['b', 'new']);
  });

  it('tells what stands in one and not in the other, twice where it stands twice', () => {
    expect(nameListDifferences('Ana 7\nBo\nBo\nCy', rows)).toEqual({
      onlyInList: ['Bo', 'Cy'],
      onlyInRows: ['12'],
    });
    expect(nameListDifferences('Ana 7\r\n 12\nBo \n', rows)).toEqual({ onlyInList: [], onlyInRows: [] });
  });
});
