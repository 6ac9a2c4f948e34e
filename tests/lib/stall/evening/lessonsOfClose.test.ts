import { describe, expect, it } from 'vitest';
import { closeBody } from '@/lib/stall/evening/closeBody';
import type { EveningAnswers } from '@/lib/stall/evening/eveningAnswers';
import { lessonsOfClose } from '@/lib/stall/evening/lessonsOfClose';
import { goodsKey } from '@/lib/stall/goodsKey';
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
    // One Otter L lies there: a sale was tapped twice, so they were never gone, whoever asked.
    const one = { pieces: 1, reason: 'tappedTwice', reasonFor: 1 } as const;
    const counted = { ...fairAnswers.stock, counted: { 'fair-shirts/otter/L': one } };
    expect(otter({ ...fairAnswers, stock: counted })).toBeUndefined();
  });

  it('is what the evening offered of goods that were gone for hours and put out again, though some came home', () => {
    const goods = { jobId: 'fair-shirts', lineId: 'fern', size: 'L' };
    const sale = { what: 'sale', goods, pay: 'cash', minor: 2800 } as const;
    // Nine were sold by 11:30, five more put out at 15:00, one of them sold; six were expected.
    const taps = [
      ...Array.from({ length: 9 }, (_, at) => [610 + at * 10, sale] as const),
      [900, { what: 'refill', goods, pieces: 5 }] as const,
      [905, sale] as const,
    ].map(([minute, tap], at) => ({
      ...{ id: `phone-${at + 1}`, device: 'phonephone', count: at + 1, at: minute * 60_000 },
      body: { stallDayId: fairPlan.stallDayId, planId: 'plan-1', currency: 'USD', tap },
    }));
    const plan = {
      ...fairPlan,
      goods: fairPlan.goods.map((one) => (goodsKey(one) === goodsKey(goods) ? { ...one, expected: 6 } : one)),
    };
    const evening = fairEvening(fairAnswers, plan, taps);
    // Eight took 90 minutes, at which 18.67 more would have gone in 210: halfway from 6 to 10 + 18.67 lies 17.33.
    expect(evening.lessons).toMatchObject([{ row: { brought: 14, left: 4 }, next: 17 }]);
    const close = closeBody(evening, {
      number: { count: 1, letter: 'A' },
      ...{ issuedOn: TEST_DAY, planId: 'plan-1', answers: fairAnswers, clock: fairClock },
    });
    expect(lessonsOfClose(close, plan)).toMatchObject([{ goods, brought: 14, next: 17 }]);
  });
});
