import { expect, it } from 'vitest';
import { benchAnswer } from '@/lib/studies/bench/benchAnswer';
import { clubWith } from '@/tests/fixtures/clubJob';
import { grid } from '@/tests/fixtures/costed';

it('a job whose day is past still takes its time of the bench', () => {
  const inTime = benchAnswer(clubWith({ 'job.wantedOn': '2026-12-11' }), grid);
  expect(inTime?.work.press?.pieces).toBe(37);
  expect(benchAnswer(clubWith({ 'job.wantedOn': '2026-11-01' }), grid)).toEqual(inTime);
});

it('a job with any other stop has no work that is known', () => {
  expect(benchAnswer(clubWith({ 'job.lines.0.blankId': 'gone' }), grid)).toBeNull();
});
