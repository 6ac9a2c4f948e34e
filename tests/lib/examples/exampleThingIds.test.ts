import { expect, it } from 'vitest';
import { exampleDocuments } from '@/lib/examples/exampleDocuments';
import { exampleThingIds } from '@/lib/examples/exampleThingIds';
import { TODAY } from '@/tests/fixtures/clubJob';

it('names every blank and every picture of the examples', () => {
  const things = exampleDocuments(TODAY).filter(({ kind }) => kind === 'blank' || kind === 'artwork');
  expect(things.map(({ id }) => id).toSorted()).toEqual(exampleThingIds.toSorted());
});
