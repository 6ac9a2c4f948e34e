import { describe, expect, it } from 'vitest';
import { quoteSchema } from '@/shared/schemas/orderPapers';
import { clubWork } from '@/tests/fixtures/benchWork';
import { heading } from '@/tests/fixtures/orderPapers';
import { ready } from './quoteTools';

const line = { jobId: 'club-order', lineId: 'shirts' };
const work = (alternatives: readonly object[]) => ready({ order: { alternatives } }).body.owner.work;

describe('the work that a quote keeps', () => {
  it('is that of its jobs, blanks four working days away', () => {
    const [asked, ...others] = work([]);
    expect(others).toEqual([]);
    expect(asked).toMatchObject({ jobId: 'club-order', alternativeId: null, lead: 4 });
    // By hand, to a tenth of a minute.
    expect(asked?.work.press?.pieces).toBe(37);
    expect(asked?.work.before[0]?.minutes).toBeCloseTo(52.9, 1);
    const runs = asked?.work.press?.runs.map(({ minutes }) => minutes) ?? [];
    for (const [index, run] of (clubWork.press?.runs ?? []).entries())
      expect(runs[index]).toBeCloseTo(run.minutes, 1);
    expect(asked?.work.after.map(({ minutes }) => minutes)).toEqual([
      expect.closeTo(44.4, 1),
      expect.closeTo(12, 1),
      expect.closeTo(30, 1),
    ]);
  });

  it('is told of an alternative too: more pieces, or a print less', () => {
    const [, more, less] = work([
      { id: 'more', kind: 'pieces', ...line, quantity: 40, size: 'L' },
      { id: 'less', kind: 'without', ...line, placementId: 'badge' },
    ]);
    expect([more?.alternativeId, more?.work.press?.pieces]).toEqual(['more', 40]);
    // 1.2 min of folding each.
    expect(more?.work.after[0]?.minutes).toBeCloseTo(48, 6);
    expect([less?.alternativeId, less?.work.press?.runs.length]).toEqual(['less', 1]);
  });

  it('is kept with the quote, on the side that is never printed', () => {
    const { body } = ready();
    const kept = { ...body, number: heading.number, owner: { ...body.owner, risks: [] } };
    expect(quoteSchema.parse(kept).owner.work).toEqual(body.owner.work);
  });
});
