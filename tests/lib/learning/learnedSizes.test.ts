import { describe, expect, it } from 'vitest';
import { foldLearned } from '@/lib/learning/foldLearned';
import type { LearnedFrom } from '@/lib/learning/learnedFrom';
import { sortedLessons } from '@/lib/learning/sortedLessons';
import { takeBack, takeOver, withEdits } from '@/lib/learning/takeOver';
import type { PastDay } from '@/lib/stall/plan/demand/pastDay';
import { sizeShares } from '@/lib/stall/plan/demand/sizeShares';
import { addDays } from '@/shared/days';
import { rateTakenSchema } from '@/shared/schemas/making/learnedEvents';
import { type StallDay, stallDaySchema } from '@/shared/schemas/stallDay';
import { club, TODAY } from '@/tests/fixtures/clubJob';
import { learnedFrom, learnedRun } from '@/tests/fixtures/learnedRun';

const sizesOf = (from: LearnedFrom) =>
  foldLearned(from).find(({ subject }) => subject.of === 'sizeMix' && subject.blankId === 'white-shirt');

const shareOf = (from: LearnedFrom, size: string) =>
  sizesOf(from)?.sizes?.find((one) => one.size === size)?.measured;

/** Ten M asked for at a fair before, some of them after the last was gone. */
const before: PastDay = {
  ...{ stallDayId: 'spring', name: 'Spring', day: '2026-05-02', sellingHours: 6, payPerHour: 20 },
  ...{ takings: 200, stallFee: 45, currency: 'USD', weather: null, expected: null },
  wanted: [{ jobId: 'club', lineId: 'shirts', size: 'M', rangeName: 'Shirts', pieces: 10, sold: 8 }],
};

function fair(day: string, more: Partial<StallDay> = {}): StallDay {
  const range = {
    ...{ id: 'shirts', name: 'Shirts', pieces: 40, sizes: { from: 'audience', audience: 'adults' } },
    designs: [{ jobId: 'club', lineId: 'shirts', share: 1 }],
  };
  const days = [{ id: 'one', day, fromMinute: 600, toMinute: 1020 }];
  return stallDaySchema.parse({ name: 'Fair', days, ranges: [range], ...more });
}

function withFair(body: StallDay, more: Partial<LearnedFrom> = {}): LearnedFrom {
  const from = learnedFrom(more);
  return { ...from, documents: { ...from.documents, stallDays: [{ id: 'fair', body }] } };
}

const toCome = addDays(TODAY, 10);

// The club ordered 4 S, 9 M, 11 L, 8 XL, 4 2XL and 1 3XL: 37. Of adults 1 % wear XS, which the shirt is not made in, so
// that 50 · 0.99 + 37 = 86.5 pieces are shared out.
describe('sizes that were asked for', () => {
  it('are those of orders, the usual mix counted like 50 pieces', () => {
    const from = learnedFrom();
    expect(shareOf(from, 'M')).toBeCloseTo((50 * 0.245 + 9) / 86.5, 12);
    expect(shareOf(from, 'L')).toBeCloseTo((50 * 0.3 + 11) / 86.5, 12);
    // 2XL moved most: 9.09 % were assumed, 8.5 of 86.5 came.
    const lesson = sizesOf(from);
    expect(lesson).toMatchObject({ observations: 37, runIds: ['run'], places: [] });
    expect(lesson?.standard).toBeCloseTo(0.09 / 0.99, 12);
    expect(lesson?.measured).toBeCloseTo(8.5 / 86.5, 12);
    // A share of Dirichlet(…) of 87 in all: √(p (1 − p) ÷ 88).
    expect(lesson?.spread).toBeCloseTo(Math.sqrt(((8.5 / 86.5) * (78 / 86.5)) / 88), 12);
  });

  it('are those of stalls beside them, with what was missed', () => {
    const from = learnedFrom({ past: [before] });
    expect(shareOf(from, 'M')).toBeCloseTo((50 * 0.245 + 9 + 10) / 96.5, 12);
    expect(sizesOf(from)?.observations).toBe(47);
  });

  it('count an order once, though two runs make it, and no run for stock', () => {
    expect(sizesOf(learnedFrom({ runs: [learnedRun(), learnedRun(undefined, 'again')] }))).toMatchObject({
      ...{ observations: 37, runIds: ['again'] },
    });
    const { standard, ...run } = learnedRun();
    const works = standard.works.map((work) => ({ ...work, orderId: null }));
    expect(sizesOf(learnedFrom({ runs: [{ ...run, standard: { ...standard, works } }] }))).toBeUndefined();
  });
});

describe('sizes taken over at a stall', () => {
  const from = withFair(fair(toCome), { past: [before] });
  const lesson = sizesOf(from);
  if (lesson === undefined) throw new Error('no lesson');
  const { edits, body } = takeOver(lesson, () => fair(toCome), TODAY);
  const held = withEdits(fair(toCome), 'stallDay', 'fair', edits);

  it('are what its plan then reckons with, its own sales counted once', () => {
    const names = club().blanks['white-shirt']?.sizes.map(({ name }) => name) ?? [];
    const [range] = held.ranges;
    if (range?.sizes == null) throw new Error('no mix');
    const planned = sizeShares(range.sizes, new Map([['M', 10]]), names);
    expect(planned.get('M')).toBeCloseTo((50 * 0.245 + 9 + 10) / 96.5, 12);
    expect(lesson.sizes?.map(({ size, measured }) => [size, measured])).toEqual([...planned]);
  });

  it('are told no more while nothing further was asked for', () => {
    const again = sizesOf(withFair(held, { past: [before], taken: [body] }));
    expect(again).toMatchObject({ places: [], measured: lesson.measured, standard: lesson.standard });
    expect(sortedLessons(again === undefined ? [] : [again], [body]).moved).toEqual([]);
  });

  it('go back to the last bit, by an entry its schema reads', () => {
    expect(rateTakenSchema.parse(body)).toEqual(body);
    expect(stallDaySchema.parse(held)).toEqual(held);
    const back = takeBack(body, () => held);
    expect(back.left).toEqual([]);
    expect(withEdits(held, 'stallDay', 'fair', back.edits)).toEqual(fair(toCome));
  });

  it('are told beside the mix of the soonest day, and go to all', () => {
    const [range] = fair(toCome).ranges;
    const women = { from: 'audience' as const, audience: 'women' as const };
    const soon = fair(addDays(TODAY, 3), { ranges: [{ ...range, sizes: women }] as StallDay['ranges'] });
    const days = [
      { id: 'a', body: fair(toCome) },
      { id: 'b', body: { ...fair(toCome), days: [] } },
      { id: 'z', body: soon },
    ];
    for (const stallDays of [days, days.toReversed()]) {
      const told = sizesOf({ ...from, documents: { ...from.documents, stallDays } });
      expect(told?.places.map(({ id }) => id)).toEqual(['z', 'a', 'b']);
      // Of women 13 of 94 that wear what the shirt is made in wear XL.
      expect(told?.sizes?.find(({ size }) => size === 'XL')?.standard).toBeCloseTo(13 / 94, 12);
    }
  });

  it('go to no day that is over, that leaves own sales out, or whose range is of several blanks', () => {
    const [range] = fair(toCome).ranges;
    if (range === undefined) throw new Error('no range');
    const mixed = { ...range, designs: [...range.designs, { ...range.designs[0], jobId: 'other' }] };
    for (const body of [
      fair(addDays(TODAY, -1)),
      fair(toCome, { areOwnSizesLeftOut: true }),
      fair(toCome, { archivedOn: TODAY }),
      fair(toCome, { ranges: [mixed] as StallDay['ranges'] }),
    ])
      expect(sizesOf(withFair(body))?.places).toEqual([]);
  });
});
