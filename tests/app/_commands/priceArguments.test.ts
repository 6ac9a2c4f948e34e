import { describe, expect, it } from 'vitest';
import { priceArguments } from '@/app/_commands/priceArguments';

describe('priceArguments', () => {
  it('takes a file by itself', () => {
    expect(priceArguments(['job.json'])).toEqual({
      kind: 'usable',
      file: 'job.json',
      jobId: null,
      curve: null,
      breaks: null,
    });
  });

  it('takes a range of batches, at the target or at a price', () => {
    expect(priceArguments(['job.json', '--curve', '1..500'])).toEqual({
      kind: 'usable',
      file: 'job.json',
      jobId: null,
      curve: { from: 1, to: 500, priceEach: null },
      breaks: null,
    });
    expect(priceArguments(['--at', '19.5', '--curve', '7..7', 'job.json'])).toMatchObject({
      curve: { from: 7, to: 7, priceEach: 19.5 },
    });
  });

  it('takes a job of a copy', () => {
    expect(priceArguments(['copy.zip', '--job', 'club-order'])).toMatchObject({
      file: 'copy.zip',
      jobId: 'club-order',
    });
  });

  it('takes breaks: so many by the sums from an order on, or first quantities', () => {
    expect(priceArguments(['job.json', '--breaks', 'auto:6:12'])).toMatchObject({
      breaks: { by: 'sums', count: 6, from: 12 },
    });
    expect(priceArguments(['job.json', '--breaks', '1,6,12', '--curve', '1..9'])).toMatchObject({
      breaks: { by: 'hand', starts: [1, 6, 12] },
      curve: { from: 1, to: 9 },
    });
  });

  it.each([
    [['a.json', '--breaks', 'auto:13:1'], '--breaks auto:13:1 cannot be read'],
    [['a.json', '--breaks', 'auto:6'], '--breaks auto:6 cannot be read'],
    [['a.json', '--breaks', '0,6'], '--breaks 0,6 cannot be read'],
    [['a.json', '--breaks', '1,1.5'], 'cannot be read'],
    [[], 'Name one file'],
    [['a.json', 'b.json'], 'Name one file'],
    [['a.json', '--curve'], '--curve needs a value'],
    [['a.json', '--curve', '0..5'], 'the smallest batch is 1 piece, and the range begins at 0.'],
    [['a.json', '--curve', '-3..5'], 'begins at -3'],
    [['a.json', '--curve', '5..1'], 'it ends at 1, before it begins at 5.'],
    [['a.json', '--curve', 'a..b'], 'is not a range of batches'],
    [['a.json', '--curve', '1.5..9'], 'is not a range of batches'],
    [['a.json', '--curve', '12'], 'is not a range of batches'],
    [['a.json', '--curve', '1..99999'], '99999 pieces are more than the 2000'],
    [['a.json', '--curve', '1..5', '--at', 'cheap'], '--at cheap is not a price'],
    [['a.json', '--curve', '1..5', '--at', '-2'], '--at -2 is not a price'],
    [['a.json', '--curve', '1..5', '--at', '0'], '--at 0 is not a price'],
    [['a.json', '--curve', '1..5', '--at', '1e999'], 'is not a price'],
    [['a.json', '--at', '20'], '--at needs a --curve'],
    [['a.json', '--curve', '1..5', '--curve', '1..6'], '--curve is given twice'],
    [['a.json', '--chart', '1..5'], '--chart is not known'],
  ])('says in one sentence what is wrong with %j', (words, why) => {
    const answer = priceArguments(words);
    expect(answer.kind === 'unusable' ? answer.why : '').toContain(why);
    expect(answer.kind === 'unusable' ? answer.why : '\n').not.toContain('\n');
  });
});
