import { describe, expect, it } from 'vitest';
import { closeBody } from '@/lib/stall/evening/closeBody';
import type { EveningAnswers } from '@/lib/stall/evening/eveningAnswers';
import { lessonsOfClose } from '@/lib/stall/evening/lessonsOfClose';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { TEST_DAY } from '@/tests/tools/clock/testDay';
import { fairAnswers, fairClock, fairEvening } from './fairEvening';

const closed = (answers: EveningAnswers = fairAnswers) =>
  closeBody(fairEvening(answers), {
    number: { count: 1, letter: 'A' },
    ...{ issuedOn: TEST_DAY, planId: 'plan-1', answers, clock: fairClock },
  });
const otter = (answers?: EveningAnswers) =>
  lessonsOfClose(closed(answers), fairPlan).find(
    ({ goods: { lineId, size } }) => lineId === 'otter' && size === 'L',
  );

describe('what a close says of the next day', () => {
  it('is nine Otter L for seven, by what was lost and asked for', () => {
    // Expected 4.05; wanted 7 + 4.08 + 3 asked for; halfway lies 9.07.
    expect(otter()).toMatchObject({ brought: 7, next: 9, goods: { rangeId: 'shirts', design: 'Otter' } });
  });

  it('is what the evening offered, number for number', () => {
    const offered = fairEvening().lessons.flatMap((lesson) =>
      lesson.kind === 'more' ? [{ size: lesson.row.goods.size, next: lesson.next }] : [],
    );
    const told = lessonsOfClose(closed(), fairPlan).map(({ goods: { size }, next }) => ({ size, next }));
    expect(offered.length).toBeGreaterThan(0);
    expect(told).toEqual(offered);
  });

  it('goes by what was asked for where the maker left out what was reckoned', () => {
    // Wanted 7 + 3; halfway lies 7.03, and one more than was brought is 8.
    expect(otter({ ...fairAnswers, notLost: ['fair-shirts/otter/L'] })).toMatchObject({ next: 8 });
  });

  it('goes by what was wanted where the plan is not here', () => {
    // 7 + 4.08 + 3 is 14.08.
    const [first] = lessonsOfClose(closed(), null);
    expect(first).toMatchObject({ next: 14, goods: { rangeId: null } });
  });

  it('says nothing of goods of which some came home', () => {
    const close = closed();
    const goods = close.goods.map((one) =>
      one.lineId === 'otter' && one.size === 'L' ? { ...one, counted: 1 } : one,
    );
    expect(
      lessonsOfClose({ goods }, fairPlan).some(
        ({ goods: { lineId, size } }) => lineId === 'otter' && size === 'L',
      ),
    ).toBe(false);
  });
});
