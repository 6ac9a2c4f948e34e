import { describe, expect, it } from 'vitest';
import type { TappedEntry } from '@/lib/stall/count/tappedEntry';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { fairGoods, goodsOf } from '@/tests/fixtures/stallTaps';
import { fairAnswers, fairEvening, fairTaps } from './fairEvening';

/** The fair with goods asked for so often more, at five to five. */
const asking = (lineId: string, size: string, times: number): readonly TappedEntry[] => [
  ...fairTaps,
  ...Array.from({ length: times }, (_, at): TappedEntry => {
    const count = fairTaps.length + at + 1;
    const tap = { what: 'asked', goods: goodsOf(fairGoods(lineId, size)), words: '' } as const;
    const body = { stallDayId: fairPlan.stallDayId, planId: 'plan-1', currency: 'USD', tap };
    return { id: `phone-${count}`, device: 'phonephone', count, at: 1015 * 60_000, body };
  }),
];

const taught = (taps = fairTaps) =>
  fairEvening(fairAnswers, fairPlan, taps).lessons.flatMap((lesson) =>
    lesson.kind === 'more' ? [lesson.row.key] : [],
  );

describe('what a day teaches of goods that were gone', () => {
  it('leaves out those of which less than one piece was missed: the only Fern 3XL, sold and not asked for', () => {
    expect(taught()).toEqual(['fair-shirts/otter/L']);
  });

  it('leaves out those of which some were left, asked for or not', () => {
    expect(taught(asking('fern', 'M', 20))).toEqual(['fair-shirts/otter/L']);
  });

  it('tells what was missed most first, by what was asked and what the pace says', () => {
    // Otter L: 3 asked for and 4.08 by the pace. Fern 3XL stands before it in the plan.
    expect(taught(asking('fern', '3XL', 7))).toEqual(['fair-shirts/otter/L', 'fair-shirts/fern/3XL']);
    expect(taught(asking('fern', '3XL', 8))).toEqual(['fair-shirts/fern/3XL', 'fair-shirts/otter/L']);
  });
});
