import { describe, expect, it } from 'vitest';
import { foldLearned } from '@/lib/learning/foldLearned';
import type { LearnedFrom } from '@/lib/learning/learnedFrom';
import { type GoodsIn, goodsInSchema } from '@/shared/schemas/making/supplyEvents';
import { clubFacts, noteOf } from '@/tests/fixtures/clubStandard';
import { learnedFrom, learnedRun } from '@/tests/fixtures/learnedRun';

/** A run of 41 shirts started, and so many found faulty before. */
function run(runId: string, faulty: number) {
  const body = { runId, blankId: 'white-shirt', size: 'M', lot: null, pieces: faulty, fault: null };
  const blankFaults = faulty === 0 ? [] : [noteOf('blankFault', body)];
  return learnedRun({ ...clubFacts({ reprints: null }), blankFaults }, runId);
}

const sent = (day: string, counted: number, faulty: number): GoodsIn =>
  goodsInSchema.parse({
    ...{ day, currency: 'USD' },
    rows: [
      {
        item: { kind: 'blank', blankId: 'white-shirt', size: 'M' },
        ...{ ordered: counted, counted, faulty, amountMinor: null },
      },
    ],
  });

const faultOf = (from: Partial<LearnedFrom>) =>
  foldLearned(learnedFrom(from)).find(({ subject }) => subject.of === 'blankFault');

// The standard of 1 % counts like 100 blanks: one faulty in 100 before anything was seen.
describe('faulty blanks', () => {
  it('of runs before anybody looked count for nothing', () => {
    // Only the second and third run: 2 in 43, and none in 41.
    const fault = faultOf({ runs: [run('one', 0), run('two', 2), run('three', 0)] });
    expect(fault).toMatchObject({ seen: 2, observations: 84, runIds: ['two', 'three'] });
    expect(fault?.measured).toBeCloseTo(3 / 184, 9);
  });

  it('that were sent count, from the first delivery on that had some', () => {
    const goodsIn = [sent('2026-11-01', 500, 0), sent('2026-11-10', 45, 3), sent('2026-11-20', 20, 0)];
    const fault = faultOf({ goodsIn });
    expect(fault).toMatchObject({ seen: 3, observations: 65, runIds: [] });
    expect(fault?.measured).toBeCloseTo(4 / 165, 9);
  });

  it('and whole ones are counted once, though they were looked at twice', () => {
    // 45 came, 3 of them faulty; 41 of the 42 were drawn and 1 more was found: 45 shirts, 4 faulty.
    const drawn = run('one', 1);
    expect(faultOf({ runs: [drawn], goodsIn: [sent('2026-11-10', 45, 3)] })).toMatchObject({
      ...{ seen: 4, observations: 45 },
    });
    // Of 20 that came 2 are faulty; 42 were drawn, so that others lay there before: 2 and 42.
    expect(faultOf({ runs: [drawn], goodsIn: [sent('2026-11-10', 20, 2)] })).toMatchObject({
      ...{ seen: 3, observations: 44 },
    });
  });

  it('that nobody ever found teach nothing', () => {
    expect(faultOf({ runs: [run('one', 0)], goodsIn: [sent('2026-11-10', 45, 0)] })).toBeUndefined();
  });
});
