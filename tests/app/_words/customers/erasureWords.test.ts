import { expect, it } from 'vitest';
import { erasureWords } from '@/app/_words/customers/erasureWords';

it('says what goes, what stays with its numbers, and what cannot be reached', () => {
  const number = (count: number) => ({ count, letter: 'A' });
  expect(
    erasureWords({
      name: 'Quillhaven Harriers',
      papers: [
        { word: 'quote', number: number(2) },
        { word: 'invoice', number: number(7) },
      ],
      stillNamed: ['Club prices'],
    }),
  ).toEqual([
    '“Quillhaven Harriers” goes for good: people, addresses, notes, files, and the names in its orders and jobs. Undo does not bring it back.',
    'Sizes, quantities, prices and payments stay, without names.',
    'Quote 2A and invoice 7A stay as they went out, with the name. The law of your place may ask you to keep them; ask your local authority.',
    'The name stands in “Club prices” too. It may mean something else there, so look yourself.',
    'Copies made before, other devices and files you carried still hold it. Delete those copies and files, and erase it on each device.',
  ]);
});

it('speaks of no papers where none went out, and names no more than it shows', () => {
  const without = erasureWords({ name: 'A', papers: [], stillNamed: [] });
  expect(without).toHaveLength(3);
  const papers = Array.from({ length: 12 }, (_, at) => ({
    word: 'quote',
    number: { count: at + 1, letter: null },
  }));
  expect(erasureWords({ name: 'A', papers, stillNamed: [] })[2]).toMatch(/quote 8 and 4 more stay as they/);
});
