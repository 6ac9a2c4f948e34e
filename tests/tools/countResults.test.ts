import { expect, test } from 'vitest';
import { countResults, readLines, totalLine } from './countResults.mjs';
import type { Line } from './lineReporter.mjs';

const ended = { code: 0, stalled: false };
const ran = (name: string, state = 'passed'): readonly Line[] => [
  { kind: 'begins', name },
  { kind: 'test', name, state },
];
const two = [...ran('a'), ...ran('b')];
const end: Line = { kind: 'end', reason: 'passed', errors: 0 };
const unloaded: Line = { kind: 'file', name: 'broken.test.ts', tests: 0, errors: 1 };

test('a good run counts its tests', () => {
  expect(countResults([...two, end], ended)).toEqual({ passed: 2, failed: 0 });
});

test('failed tests are counted, and skipped ones are neither', () => {
  const lines: Line[] = [...two, ...ran('c', 'failed'), ...ran('d', 'skipped'), { ...end, reason: 'failed' }];
  expect(countResults(lines, { ...ended, code: 1 })).toEqual({ passed: 2, failed: 1 });
});

test.each<[string, readonly Line[], { code: number; stalled: boolean }, number, RegExp]>([
  ['a runner that wrote nothing', [], { ...ended, code: 134 }, 0, /134 before its end/],
  ['a runner that says it is well but stopped early', two, ended, 2, /before its end/],
  ['a run of no test', [end], ended, 0, /no test at all/],
  [
    'a file that does not load',
    [...two, unloaded, { ...end, reason: 'failed' }],
    { ...ended, code: 1 },
    2,
    /broken/,
  ],
  ['an error outside of any test', [...two, { ...end, errors: 1 }], ended, 2, /no test failed/],
  ['a code that is not well', [...two, end], { ...ended, code: 1 }, 2, /no test failed/],
  [
    'a run that stands still',
    [...two, { kind: 'begins', name: 'c' }],
    { code: 137, stalled: true },
    2,
    /stood still in “c”/,
  ],
])('%s is one failure beside what passed, and says why', (_, lines, how, passed, why) => {
  expect(countResults(lines, how)).toEqual({ passed, failed: 1, why: expect.stringMatching(why) });
});

test('a line cut short by the end of the runner is left out', () => {
  const text = two.map((line) => `${JSON.stringify(line)}\n`).join('');
  expect(readLines(`${text}{"kind":"te`)).toEqual(two);
  expect(readLines('')).toEqual([]);
});

test('the last line adds all stages up', () => {
  const counts = [
    { passed: 7, failed: 0 },
    { passed: 1, failed: 2 },
  ];
  expect(totalLine(counts)).toBe('8 passed, 2 failed');
});
