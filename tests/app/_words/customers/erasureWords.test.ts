import { expect, it } from 'vitest';
import { erasureWords } from '@/app/_words/customers/erasureWords';

it('says what goes, what stays with its numbers, and what cannot be reached', () => {
  expect(
    erasureWords({
      name: 'Quillhaven Harriers',
      papers: ['quote 26-014A, version 2', 'invoice 26-007A'],
      stillNamed: ['Club prices'],
    }),
  ).toEqual([
    '“Quillhaven Harriers” goes for good: people, addresses, notes, files, and the names in its orders and jobs. Undo does not bring it back.',
    'Sizes, quantities, prices and payments stay, without names.',
    'Quote 26-014A, version 2 and invoice 26-007A stay as they went out, with the name. The law of your place may ask you to keep them; ask your local authority.',
    'The name stands in “Club prices” too. It may mean something else there, so look yourself.',
    'Copies made before, other devices and files you carried still hold it. Delete those copies and files, and erase it on each device.',
  ]);
});

it('speaks of no papers where none went out, and names no more than it shows', () => {
  const without = erasureWords({ name: 'A', papers: [], stillNamed: [] });
  expect(without).toHaveLength(3);
  const papers = Array.from({ length: 12 }, (_, at) => `invoice 26-00${at + 1}A`);
  expect(erasureWords({ name: 'A', papers, stillNamed: [] })[2]).toMatch(
    /invoice 26-008A and 4 more stay as they/,
  );
});
