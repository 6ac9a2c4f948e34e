import { expect, test } from 'vitest';
import { cases } from './cases';

test('the seed of the run is handed to every property test', () => {
  expect(cases(1_000, '1180779338')).toEqual({ numRuns: 1_000, seed: 1_180_779_338 });
});

test('without a seed each test draws its own', () => {
  expect(cases(1_000, '')).toEqual({ numRuns: 1_000 });
});

test.each(['one', '1.5', '-1', '12345678901'])('a seed of %s is refused', (seed) => {
  expect(() => cases(1_000, seed)).toThrow(/PROPERTY_SEED/);
});
