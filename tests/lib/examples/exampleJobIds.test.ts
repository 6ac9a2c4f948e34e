import { expect, it } from 'vitest';
import { exampleDocuments } from '@/lib/examples/exampleDocuments';
import { exampleJobIds } from '@/lib/examples/exampleJobIds';

it('exampleJobIds names exactly the jobs of the example', () => {
  const jobs = exampleDocuments('2026-11-25').filter(({ kind }) => kind === 'job');
  expect(jobs.map(({ id }) => id)).toEqual(exampleJobIds);
});
