import { expect, it } from 'vitest';
import { applyChanges, ChangeLeadsNowhere } from '@/lib/findings/applyChanges';
import { club } from '@/tests/fixtures/clubJob';

it('applyChanges writes into a copy and shares what it does not touch', () => {
  const before = club();
  const kept = structuredClone(before);
  const after = applyChanges(before, [
    { document: 'job', path: ['lines', 0, 'orderedQuantity'], value: 40 },
    { document: 'blank', id: 'white-shirt', path: ['sizes', 1, 'packSize'], value: 3 },
    { document: 'artwork', id: 'club-crest', path: ['version'], value: 2 },
    { document: 'workshop', path: ['circuit'], value: null },
  ]);
  expect(before).toEqual(kept);
  expect(after).toMatchObject({
    job: { lines: [{ orderedQuantity: 40 }] },
    artworks: { 'club-crest': { version: 2 } },
    workshop: { circuit: null },
  });
  expect(after).toHaveProperty('blanks.white-shirt.sizes.1.packSize', 3);
  expect(after).toHaveProperty('workshop.rates', before.workshop.rates);
});

it('applyChanges adds a field that a document may have but did not', () => {
  const rate = { value: 20, unit: 'money/h', date: '2026-11-25', origin: 'yours' };
  const after = applyChanges(club(), [{ document: 'job', path: ['rates', 'wage'], value: rate }]);
  expect(after).toHaveProperty('job.rates.wage', rate);
});

it('applyChanges notes an approval beside the documents, and takes one away', () => {
  const approve = (id: string, value: number | null) =>
    applyChanges(club(), [{ document: 'approval', id, path: [], value }]);
  expect(approve('hill-path', 1)).toHaveProperty('approvedVersions', { 'club-crest': 1, 'hill-path': 1 });
  expect(approve('club-crest', null)).toHaveProperty('approvedVersions', {});
});

it.each([
  [{ document: 'approval', path: [], value: 1 } as const],
  [{ document: 'job', path: ['lines', 9, 'name'], value: '' } as const],
  [{ document: 'blank', path: ['name'], value: '' } as const],
  [{ document: 'blank', id: 'constructor', path: ['name'], value: '' } as const],
  [{ document: 'job', path: ['name', 'first'], value: '' } as const],
])('applyChanges refuses a change that leads nowhere: %o', (change) => {
  expect(() => applyChanges(club(), [change])).toThrow(ChangeLeadsNowhere);
});
