import { expect, test } from 'vitest';
import { cases, draws, patience } from './cases';

test('the seed of the run is handed to every property test', () => {
  expect(cases(1_000, '1180779338')).toMatchObject({ seed: 1_180_779_338 });
});

test('without a seed each test draws its own', () => {
  expect(cases(1_000, '')).not.toHaveProperty('seed');
});

test.each(['one', '1.5', '-1', '12345678901'])('a seed of %s is refused', (seed) => {
  expect(() => cases(1_000, seed)).toThrow(/PROPERTY_SEED/);
});

test.each([
  [300, '', 300],
  [300, '1', 300],
  [300, '10', 3000],
  [300, '0.1', 30],
  // A law is tried at least once.
  [4, '0.1', 1],
])('of %i usual cases, %s times as many are %i', (usual, times, expected) => {
  expect(draws(usual, times)).toBe(expected);
});

test('more draws get more time, fewer get no less', () => {
  expect([patience(30_000, '10'), patience(30_000, '0.1')]).toEqual([300_000, 30_000]);
});

test.each(['ten', '0', '-1', '1e3'])('%s is no number of times', (times) => {
  expect(() => draws(300, times)).toThrow(/DRAWS/);
});
