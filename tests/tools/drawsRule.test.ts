import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { testSources } from '@/tests/tools/clock/testSources';
import { readSource } from '@/tests/tools/floors/source';
import { drawsRule } from './drawsRule';

const root = fileURLToPath(new URL('../..', import.meta.url));

describe('every random case is counted in one place', () => {
  test('in the tests', () => expect(drawsRule(testSources(root))).toEqual([]));

  test.each<[string, string]>([
    ['a property without settings', 'fc.assert(law);'],
    ['a property with a number of its own', 'fc.assert(law, settings);'],
    ['a sample of a hundred unless told', 'fc.sample(jobs);'],
    ['a sample of a written number', 'fc.sample(jobs, 20);'],
    ['a number of runs written out', 'const settings = { seed, numRuns: 1000 };'],
  ])('%s is found', (_, text) => {
    expect(drawsRule([readSource('tests/a.test.ts', text)])).toHaveLength(1);
  });

  test.each<[string, string]>([
    ['a property with cases', 'fc.assert(law, cases(100));'],
    ['a sample as large as another', 'fc.sample(jobs, { seed, numRuns: drawn.length });'],
  ])('%s is right', (_, text) => {
    expect(drawsRule([readSource('tests/a.test.ts', text)])).toEqual([]);
  });
});
