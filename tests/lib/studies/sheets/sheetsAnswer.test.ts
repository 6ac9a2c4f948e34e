import { describe, expect, it } from 'vitest';
import { priceJob } from '@/lib/costing/priceJob';
import { newParts } from '@/lib/drafts/newParts';
import { applyChanges } from '@/lib/findings/applyChanges';
import { sheetsAnswer } from '@/lib/studies/sheets/sheetsAnswer';
import { type JobInput, jobInputSchema } from '@/shared/schemas/request';
import { sheetSizes } from '@/shared/tables/sheetSizes';
import { club, clubWith, TODAY } from '@/tests/fixtures/clubJob';
import { grid } from '@/tests/fixtures/costed';

const withSheets = (): JobInput => {
  const input = club();
  const parts = newParts(TODAY, input.workshop);
  return {
    ...input,
    workshop: {
      ...input.workshop,
      sheets: [
        ...input.workshop.sheets,
        parts.sheet('a5', 'A5 sheet', sheetSizes.a5),
        parts.sheet('tabloid', 'Tabloid sheet', sheetSizes.tabloid),
      ],
    },
  };
};

const answerOf = (input: JobInput) => {
  const answer = sheetsAnswer(input, grid);
  if (answer === null) throw new Error('a stop stands');
  return answer;
};

describe('the sheets of the worked example', () => {
  it('are 37 with one back picture, nine with four badges and one with the last', () => {
    const { plan } = answerOf(club());
    expect(plan.sheets.map(({ count, pieces, spare }) => [count, pieces.length, spare])).toEqual([
      [37, 1, 0],
      [9, 4, 0],
      [1, 1, 3],
    ]);
    expect([plan.count, plan.lowerBound]).toEqual([47, 47]);
    // 37 of 8 × 10 in and 37 of 3.5 × 3.5 in on 47 of 8.5 × 11 in.
    expect(plan.wasteShare).toBeCloseTo(1 - (37 * (80 + 12.25)) / (47 * 93.5), 12);
  });

  it('compare by the way every job is costed, say what stops one, and mark the present', () => {
    const input = withSheets();
    const { choices } = answerOf(input);
    expect(choices.map(({ sheetId, isPresent, kind }) => [sheetId, isPresent, kind])).toEqual([
      ['letter', true, 'costed'],
      ['a5', false, 'stopped'],
      ['tabloid', false, 'costed'],
    ]);
    for (const choice of choices) {
      const moved = { ...input, job: { ...input.job, sheetId: choice.sheetId } };
      const { costSheet } = priceJob(moved, grid);
      if (choice.kind === 'stopped') {
        expect(choice.why?.id).toBe('LAY-01');
        expect(costSheet).toBeNull();
      } else {
        expect(choice.fullCost).toBe(costSheet?.fullCost);
        expect(choice.costEach).toBeCloseTo((costSheet?.fullCost ?? 0) / 37, 12);
      }
    }
    // Two back pictures and fifteen badges (3 × 4, turned or not, and more in what is left) go on 11 × 17 in.
    expect(choices[2]).toMatchObject({ sheets: expect.any(Number) });
  });

  it('go six to a sheet at 3.41 in, which saves three sheets and 1.73', () => {
    const input = club();
    const [idea, ...others] = answerOf(input).smaller;
    expect(others).toEqual([]);
    expect(idea).toMatchObject({ placementId: 'badge', perSheetNow: 4, perSheet: 6, sheetsLess: 3 });
    expect(idea?.to.widthMm).toBeCloseTo(3.41 * 25.4, 9);
    expect(idea?.saved).toBeCloseTo(1.73, 2);
    const after = jobInputSchema.parse(applyChanges(input, idea?.changes ?? []));
    const before = priceJob(input, grid).costSheet?.fullCost ?? 0;
    expect(before - (priceJob(after, grid).costSheet?.fullCost ?? 0)).toBeCloseTo(idea?.saved ?? 0, 9);
  });

  it('are just full at 40 pieces, which add 25.66', () => {
    const [spot] = answerOf(club()).quantities;
    expect(spot?.n).toBe(40);
    expect(spot?.addedCost).toBeCloseTo(25.66, 2);
  });

  it('offer to share sheets only where that spares any', () => {
    expect(answerOf(club()).together).toBeNull();
    const mixed = clubWith({
      'job.lines.0.placements.0.prints': [{ sizes: null, widthMm: 150, heightMm: 200 }],
    });
    const offered = answerOf(mixed).together;
    expect(offered?.sheetsLess).toBeGreaterThan(0);
    const together = { ...mixed, job: { ...mixed.job, gang: 'together' as const } };
    const saved =
      (priceJob(mixed, grid).costSheet?.fullCost ?? 0) - (priceJob(together, grid).costSheet?.fullCost ?? 0);
    expect(offered?.saved).toBeCloseTo(saved, 9);
    expect(answerOf(together).together).toBeNull();
  });

  it('are not laid out while a stop stands', () => {
    expect(sheetsAnswer(clubWith({ 'job.lines.0.orderedQuantity': 36 }), grid)).toBeNull();
  });
});
