import { expect, test } from 'vitest';
import { countResults, totalLine } from './countResults.mjs';

const ended = { code: 0, timedOut: false };
const good = { numPassedTests: 7, numFailedTests: 0, success: true, testResults: [] };
const unloaded = { name: 'broken.test.ts', status: 'failed', assertionResults: [] };

test('a good run counts its tests', () => {
  expect(countResults(good, ended)).toEqual({ passed: 7, failed: 0 });
});

test('failed tests are counted as the runner counts them', () => {
  const report = { ...good, numFailedTests: 2, success: false };
  expect(countResults(report, { ...ended, code: 1 })).toEqual({ passed: 7, failed: 2 });
});

test.each([
  ['a runner without a report', undefined, { ...ended, code: 134 }, /134 and without a report/],
  ['a runner that says it is well but wrote no report', undefined, ended, /without a report/],
  ['a run of no test', { ...good, numPassedTests: 0 }, ended, /no test at all/],
  [
    'a file that does not load',
    { ...good, testResults: [unloaded] },
    { ...ended, code: 1 },
    /broken\.test\.ts/,
  ],
  ['an error outside of any test', good, { ...ended, code: 1 }, /no test failed/],
  ['a report of no success', { ...good, success: false }, ended, /no test failed/],
  ['a run that takes too long', good, { code: 137, timedOut: true }, /time/],
])('%s is one failure, and says why', (_, report, end, why) => {
  expect(countResults(report, end)).toMatchObject({ failed: 1, why: expect.stringMatching(why) });
});

test('the last line adds all stages up', () => {
  const counts = [
    { passed: 7, failed: 0 },
    { passed: 1, failed: 2 },
  ];
  expect(totalLine(counts)).toBe('8 passed, 2 failed');
});
