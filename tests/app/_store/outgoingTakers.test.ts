import { expect, it } from 'vitest';
import { outgoingTakers } from '@/app/_transactions/outgoingTakers';
import type { Entry } from '@/shared/schemas/happened';

const refill = (id: string): Entry => ({
  id,
  kind: 'inkRefill',
  version: 1,
  device: 'phone000',
  count: 1,
  at: 0,
  body: { day: '2026-11-03', mL: 70 },
});
const takes = (id: string, entryId: string): Entry => ({
  ...refill(id),
  kind: 'takeBack',
  body: { entryId },
});

it('in the place of what is here, entries that did not come and count are taken back, each once', () => {
  const [mine, gone, theirs] = [refill('mine'), refill('gone'), refill('theirs')];
  expect(outgoingTakers([mine, gone, takes('taker', 'gone'), theirs], [theirs], 'replace')).toEqual(['mine']);
});

it('what would take back an entry that came is taken back, also where only that lets another count', () => {
  // A copy of a part may hold a taking back without what it takes back.
  const came = [takes('c', 'mine'), takes('d', 'c')];
  const here = [refill('mine'), takes('t', 'd'), ...came];
  expect(outgoingTakers(here, came, 'replace')).toEqual(['t', 'mine']);
});

it('beside what is here nothing is taken back but the undo of an earlier arrival', () => {
  const came = [refill('one'), refill('two')];
  const undone = { ...takes('u', 'one'), body: { entryId: 'one', cause: 'arrivalUndone' } };
  expect(outgoingTakers([...came, undone, takes('t', 'two')], came, 'beside')).toEqual(['u']);
});

it('rows that nothing can read are in nobody’s way', () => {
  expect(outgoingTakers([null, 5, { id: 7 }], [], 'replace')).toEqual([]);
});
