import { expect, it } from 'vitest';
import { readJobInput } from '@/lib/findings/readJobInput';
import { club } from '@/tests/fixtures/clubJob';

const entries = (count: number, value: unknown) =>
  Object.fromEntries(Array.from({ length: count }, (_, index) => [`more${index}`, value]));

it('reads the documents of a job', () => {
  const { ok } = readJobInput(club());
  expect(ok).toBe(true);
});

it.each(['blanks', 'artworks'] as const)('refuses %s by the ten thousand without reading them', (name) => {
  const request = { ...club(), [name]: entries(80_000, {}) };
  const read = readJobInput(request);
  expect(read.ok ? [] : read.problem).toMatchObject([
    { id: 'DOC-01', variant: 'tooMany', where: { path: [name] }, facts: { limit: 1_000 } },
  ]);
});

it('reads a thousand artworks beside those of the job, and tells of each that is broken', () => {
  const artworks = { ...club().artworks };
  const [whole] = Object.values(artworks);
  const room = 1_000 - Object.keys(artworks).length;
  expect(readJobInput({ ...club(), artworks: { ...artworks, ...entries(room, whole) } }).ok).toBe(true);
  const read = readJobInput({ ...club(), artworks: { ...artworks, ...entries(room, {}) } });
  expect(read.ok ? 0 : read.problem.length).toBe(101);
});
