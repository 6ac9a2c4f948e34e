import { expect, it } from 'vitest';
import { previewNames } from '@/lib/names/previewNames';
import { readNames } from '@/lib/names/readNames';
import { sizeForm, sizeFormCsv, sizeFormMessage } from '@/lib/names/sizeForm';

const SIZES = ['S', 'M', 'L'];
const words = { name: 'Name', size: 'Size', number: 'Number', howTo: 'One line for each person.' };
const known = [
  { name: 'Silva, Ana', size: 'L', number: '7' },
  { name: '=Bo "the wall"', size: 'M', number: '' },
];
const form = sizeForm('Club shirts', SIZES, known, 2);

it('is a table by RFC 4180 that no spreadsheet runs', () => {
  expect(sizeFormCsv(form, words)).toBe(
    'Name,Size,Number\r\n"Silva, Ana",L,7\r\n"\'=Bo ""the wall""",M,\r\n,,\r\n,,\r\n',
  );
});

it('leaves the column of numbers out where no piece bears one', () => {
  expect(sizeFormCsv(form, { ...words, number: null }).split('\r\n')[0]).toBe('Name,Size');
});

it('is a message that says how to fill it', () => {
  expect(sizeFormMessage(form, words)).toBe(
    'Club shirts\nOne line for each person.\nSize: S, M, L\n\nName; Size; Number\nSilva, Ana; L; 7\n=Bo "the wall"; M; ',
  );
});

it.each([
  ['commas', sizeFormCsv(form, words)],
  ['tabs', 'Name\tSize\tNumber\r\nSilva, Ana\tL\t7\r\n"=Bo ""the wall"""\tM\t\r\n\t\t\r\n'],
])('comes back as it went out, with %s', (_, text) => {
  const rows = previewNames(readNames(text, SIZES), SIZES).rows;
  expect(rows.map(({ name, size, number }) => ({ name, size, number }))).toEqual(known);
  expect(rows.flatMap(({ faults }) => faults)).toEqual([]);
});
