import { expect, it } from 'vitest';
import { erasureWords } from '@/app/_words/customers/erasureWords';
import { stillNamedText } from '@/app/_words/customers/stillNamedText';

it('says what goes, what stays with its numbers, and what cannot be reached', () => {
  expect(
    erasureWords({
      name: 'Quillhaven Harriers',
      papers: ['quote 26-014A, version 2', 'invoice 26-007A'],
      ownDrafts: ['order “Shirts for Alex”', 'charge “Drive to Alex” of “Shirts for Alex”'],
      ownEntries: ['expense “Cap for Zebulon”'],
      elsewhere: ['price list “Club prices”'],
    }),
  ).toEqual([
    '“Quillhaven Harriers” goes for good: people, addresses, tax number, files; of its orders what was asked, agreed and noted, who answered, and the names on the pieces. Undo does not bring it back.',
    'What else was typed in its orders and jobs, such as their names, charges and open items, loses the full names and contact.',
    'Sizes, quantities, prices and payments stay, without names.',
    'Left for you to look at: order “Shirts for Alex” and charge “Drive to Alex” of “Shirts for Alex”. Part of a name stands there; change it if it means them.',
    'Part of a name stays in what was noted, which cannot be changed: expense “Cap for Zebulon”.',
    'Quote 26-014A, version 2 and invoice 26-007A stay as they went out, with the name. The law of your place may ask you to keep them; ask your local authority.',
    'The name stands in price list “Club prices” too. It may mean something else there, so look yourself.',
    'Copies made before, other devices and files you carried still hold it. Delete those copies and files, and erase it on each device.',
  ]);
});

it('speaks of no papers where none went out, and names no more than it shows', () => {
  const none = { name: 'A', papers: [], ownDrafts: [], ownEntries: [], elsewhere: [] };
  expect(erasureWords(none)).toHaveLength(4);
  const papers = Array.from({ length: 12 }, (_, at) => `invoice 26-00${at + 1}A`);
  expect(erasureWords({ ...none, papers })[3]).toMatch(/invoice 26-008A and 4 more stay as they/);
});

it('tells of a text that names somebody what it is, where it stands, and its beginning', () => {
  const place = {
    where: 'ownDraft',
    kind: 'order',
    id: 'o',
    path: 'charges.what',
    text: 'Drive to Alex',
  } as const;
  expect(stillNamedText(place, 'Shirts')).toBe('charge “Drive to Alex” of “Shirts”');
  const name = { ...place, path: 'name', text: 'Shirts for Alex' };
  expect(stillNamedText(name, 'Shirts for Alex')).toBe('order “Shirts for Alex”');
  const list = { ...place, kind: 'priceList', path: 'leadTime', text: `Alex\n${'x'.repeat(80)}` };
  expect(stillNamedText(list, null)).toBe(`price list “Alex ${'x'.repeat(55)}…”`);
});
