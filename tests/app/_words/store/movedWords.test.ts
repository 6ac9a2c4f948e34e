import { expect, test } from 'vitest';
import { lostWords, movedWords } from '@/app/_words/store/movedWords';

test('undo says what it took back, and where', () => {
  expect(movedWords({ direction: 'undo', label: 'Price of a shirt', names: ['Ramblers Club shirts'] })).toBe(
    'Undone: Price of a shirt, in Ramblers Club shirts',
  );
});

test('redo says that it was done again, and in how many more documents', () => {
  expect(
    movedWords({
      direction: 'redo',
      label: 'Cap on the items of the list',
      names: ['Shirts', 'Mugs', 'Bags'],
    }),
  ).toBe('Done again: Cap on the items of the list, in Shirts and 2 more');
});

test('a label that names the document says where already', () => {
  expect(movedWords({ direction: 'undo', label: 'Remove Mugs', names: ['Mugs'] })).toBe(
    'Undone: Remove Mugs',
  );
});

test('a document without a name is left unsaid', () => {
  expect(movedWords({ direction: 'undo', label: 'Pay', names: [null] })).toBe('Undone: Pay');
});

test('a step that cannot be read any more changed nothing', () => {
  expect(lostWords('undo', 'Pay')).toMatch(/^“Pay” can no longer be undone: .*Nothing was changed\.$/);
});
