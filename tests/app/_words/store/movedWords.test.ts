import { expect, test } from 'vitest';
import { arrivalLabel } from '@/app/_words/store/arrivalLabels';
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

test.each(['replace', 'beside'] as const)('of a file that was taken in no document is named: %s', (mode) => {
  const label = arrivalLabel(mode, 'copy.zip');
  expect(movedWords({ direction: 'undo', label, names: ['New job', 'Shirts', 'Mugs'] })).toBe(
    `Undone: ${label}`,
  );
});

test('a document without a name is left unsaid', () => {
  expect(movedWords({ direction: 'undo', label: 'Pay', names: [null] })).toBe('Undone: Pay');
});

test('undo of what was only noted says that it was taken back, and redo that it counts again', () => {
  const refill = { label: 'Refill of 3 Nov 2026', names: [], onlyNoted: true } as const;
  expect(movedWords({ direction: 'undo', ...refill })).toBe('Taken back: Refill of 3 Nov 2026');
  expect(movedWords({ direction: 'redo', ...refill })).toBe('Counts again: Refill of 3 Nov 2026');
});

test('a paper is said to be withdrawn, whose number is gone, or in force again', () => {
  const issue = { label: 'Issue a version of Shirts', names: [] } as const;
  expect(movedWords({ direction: 'undo', ...issue, papers: [{ number: '3K', counts: false }] })).toBe(
    'Undone: Issue a version of Shirts. Version 3K is withdrawn; its number is not used again.',
  );
  expect(movedWords({ direction: 'redo', ...issue, papers: [{ number: '3K', counts: true }] })).toBe(
    'Done again: Issue a version of Shirts. Version 3K is in force again.',
  );
});

test('a step that cannot be read any more changed nothing', () => {
  expect(lostWords('undo', 'Pay')).toMatch(/^“Pay” can no longer be undone: .*Nothing was changed\.$/);
});
