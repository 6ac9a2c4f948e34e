import { describe, expect, it } from 'vitest';
import { clubOrder } from '@/lib/examples/clubOrder';
import { fairShirts } from '@/lib/examples/fairJobs';
import { rulerMarks } from '@/lib/price/rulerMarks';
import type { JobInput } from '@/shared/schemas/request';
import { costed } from '@/tests/fixtures/costed';
import { fixedRate } from '@/tests/fixtures/numbers';
import { plainJob } from '@/tests/fixtures/plainJob';

const club = clubOrder('2026-11-25', '2026-12-11');
const idsOf = (input: JobInput) => rulerMarks(costed(input)).map(({ id }) => id);

const withCeilings = (input: JobInput, ceilings: readonly (number | null)[]): JobInput => ({
  ...input,
  job: {
    ...input.job,
    lines: input.job.lines.map((line, index) => ({ ...line, marketCeiling: ceilings[index] ?? null })),
  },
});

describe('the ruler', () => {
  it('has no ceiling where nobody has seen one', () => {
    expect(idsOf(withCeilings(club, [null]))).toEqual([
      'outOfPocketFloor',
      'variableFloor',
      'fullCost',
      'target',
    ]);
  });

  it('has none where one of several lines has none', () => {
    expect(idsOf(withCeilings(fairShirts('2026-11-25'), [30, 30, null, 30]))).not.toContain('ceiling');
  });

  it('has the mean over all pieces, without the tax that is inside', () => {
    // 30 shirts at 30, 26 at 28, 24 at 26 and 16 at 32 are 2,764 for 96; 7 % is inside.
    const marks = rulerMarks(costed(withCeilings(fairShirts('2026-11-25'), [30, 28, 26, 32])));
    expect(marks.at(-1)).toMatchObject({ id: 'ceiling' });
    expect(marks.at(-1)?.each).toBeCloseTo(2764 / 96 / 1.07, 9);
  });

  it('has the ceiling as typed where tax is added later', () => {
    const input = plainJob({
      sizes: [{ quantity: 3, blank: 1 }],
      channel: { taxMode: 'added', tax: fixedRate(0.2, 'share') },
    });
    expect(rulerMarks(costed(withCeilings(input, [9]))).at(-1)?.each).toBe(9);
  });
});
