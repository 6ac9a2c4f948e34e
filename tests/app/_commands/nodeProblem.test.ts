import { expect, test } from 'vitest';
import { nodeProblem } from '@/app/_commands/nodeProblem.mjs';

test.each([
  ['20.19.0', '>=20.19'],
  ['v20.20.2', '>=20.19'],
  ['22.0.0', '>=20.19'],
  ['20.19.0', '>=20.19.0'],
])('Node %s will do for %s', (version, range) => {
  expect(nodeProblem(version, range)).toBeUndefined();
});

test.each([
  ['20.18.3', '>=20.19'],
  ['v18.20.0', '>=20.19'],
  ['20.9.0', '>=20.19'],
  ['8.99.0', '>=20.19'],
])('Node %s will not do for %s', (version, range) => {
  expect(nodeProblem(version, range)).toMatch(/^Node 20\.19 or newer is needed, and this is Node \d/);
});
