import { expect, test } from 'vitest';
import { changedPath } from '@/lib/merging/changedPath';

const job = {
  name: 'Club',
  lines: [
    { id: 'a', price: 19 },
    { id: 'b', price: 16 },
  ],
  rates: {},
};

test.each([
  ['a field', { ...job, name: 'Team' }, ['name']],
  ['a field of an item', { ...job, lines: [job.lines[0], { id: 'b', price: 12 }] }, ['lines', 1, 'price']],
  ['a key that was not there', { ...job, rates: { wage: 18 } }, ['rates', 'wage']],
  ['a list with an item less', { ...job, lines: [job.lines[1]] }, ['lines']],
  ['two fields', { ...job, name: 'Team', rates: { wage: 18 } }, []],
  ['two fields of one item', { ...job, lines: [{ id: 'c', price: 2 }, job.lines[1]] }, ['lines', 0]],
  ['nothing', { ...job }, []],
])('the way to %s that changed', (_, after, expected) => expect(changedPath(job, after)).toEqual(expected));

test('a document that was not there changed as a whole', () => {
  expect(changedPath(undefined, job)).toEqual([]);
});
