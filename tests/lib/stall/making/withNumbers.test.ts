import { describe, expect, it } from 'vitest';
import { withNumbers } from '@/lib/stall/making/withNumbers';
import { fairAsked } from '@/tests/fixtures/fairAsked';

const [asked] = fairAsked.jobs;
if (asked === undefined) throw new Error('the fair has no job');
const { job } = asked.input;
const [fern, ...others] = job.lines;
const [second] = others;
if (fern === undefined || second === undefined) throw new Error('the fair has no two designs');
const ten = [{ size: 'L', quantity: 10 }];

describe('a job with what is to be pressed', () => {
  const before = { ...job, lines: [fern, second] };
  const after = { ...before, lines: [{ ...fern, quantities: ten }, second] };

  it('keeps what was changed in it since the numbers were reckoned', () => {
    const now = { ...before, name: 'Renamed', lines: [{ ...fern, name: 'Fern, blue' }, second] };
    expect(withNumbers(now, before, after)).toEqual({
      ...now,
      lines: [{ ...fern, name: 'Fern, blue', quantities: ten }, second],
    });
  });

  it('keeps a line that was added since, and brings back none that was taken out', () => {
    const added = { ...second, id: 'new-line' };
    expect(withNumbers({ ...before, lines: [fern, added] }, before, after).lines).toEqual([
      { ...fern, quantities: ten },
      added,
    ]);
  });

  it('takes out a line of which nothing is to be pressed, and adds one that is new', () => {
    const fresh = { ...second, id: 'fresh' };
    expect(withNumbers(before, before, { lines: [{ ...fern, quantities: ten }, fresh] }).lines).toEqual([
      { ...fern, quantities: ten },
      fresh,
    ]);
  });
});
