import { describe, expect, it } from 'vitest';
import { askedAgainstList, differsFromList, ruleAtWork } from '@/lib/price/list/askedAgainstList';
import { ladderOf } from '@/lib/price/list/ladder';
import type { LineList } from '@/lib/price/list/lineList';
import type { MinorUnits } from '@/shared/money';

const cents = (amount: number) => Math.round(amount * 100) as MinorUnits;

/** The tiers of the club's order, typed and worked by hand: 144.50, 34.50, 23.50, 18.00 and 15.50 from 1, 6, 12, 24 and 48. */
const list: LineList = {
  lineId: 'shirts',
  rule: 'capped',
  start: cents(0),
  breaks: [
    { from: 1, each: 144.5 },
    { from: 6, each: 34.5 },
    { from: 12, each: 23.5 },
    { from: 24, each: 18 },
    { from: 48, each: 15.5 },
  ].map(({ from, each }) => ({ from, each: cents(each), total: cents(from * each) })),
  sizes: [
    { size: 'S', more: cents(0) },
    { size: '2XL', more: cents(2.5) },
  ],
  largestOvercharge: 0.2,
  leastMargin: 0.3,
};
const told = (of: LineList) =>
  ladderOf(of).map(({ kind, from, to, amount }) => `${kind} ${from}-${to ?? ''} ${amount / 100}`);

describe('the row of prices of a list', () => {
  it('tells the first orders of a capped list by the sum they pay, and one alone by its own', () => {
    // 6 × 34.50 = 207 is what 2 to 5 pay too; one pays 144.50.
    expect(told(list)).toEqual([
      'together 1-5 207',
      'each 6-11 34.5',
      'each 12-23 23.5',
      'each 24-47 18',
      'each 48- 15.5',
    ]);
    expect(ladderOf(list)[0]?.alone).toBe(cents(144.5));
  });

  it('tells every price a piece of a list that is sold as it stands', () => {
    expect(told({ ...list, rule: 'asListed' })[0]).toBe('each 1-5 144.5');
  });

  it('tells a start and a price a piece where the set-up is apart', () => {
    const [first] = list.breaks;
    if (first === undefined) throw new Error('the list is empty');
    const apart: LineList = {
      ...list,
      rule: 'setUpApart',
      start: cents(132),
      breaks: [{ ...first, each: cents(12.5) }],
    };
    expect(told(apart)).toEqual(['start 1- 132', 'each 1- 12.5']);
  });
});

describe('what a job asks beside its list', () => {
  const asked = (
    askedPrice: number | null,
    n: number,
    upCharges: readonly { size: string; amount: number }[] = [],
    quantities: readonly { size: string; quantity: number }[] = [],
  ) =>
    askedAgainstList(
      { askedPrice, askedStart: null, upCharges: [...upCharges], quantities: [...quantities] },
      list,
      { n, listEach: cents(n === 44 ? 16.5 : 18) },
      'USD',
    );

  it('is over it, size by size', () => {
    expect(asked(19, 37, [{ size: '2XL', amount: 1.5 }])).toMatchObject({
      listEach: 1800,
      asked: 1900,
      over: 100,
      held: null,
      sizes: [{ size: '2XL', own: 150, listed: 250 }],
    });
  });

  it('is held down by the rule before a break: 44 pay as 48 do', () => {
    // 48 × 15.50 = 744, less than 44 × 18 = 792.
    expect(asked(19, 44)?.held).toEqual({ pays: 74400, as: 48 });
    // 744 ÷ 44 = 16.91, so that 16.50 is suggested and 19.00 lies 2.50 over it.
    expect(asked(19, 44)).toMatchObject({ listEach: 1650, over: 250 });
  });

  it('comes to what its sizes add as well, by the list and as it is asked', () => {
    const sizes = [
      { size: 'S', quantity: 40 },
      { size: '2XL', quantity: 4 },
    ];
    // By the list 744 and 4 × 2.50; asked 44 × 19 and 4 × 1.50; suggested 44 × 16.50 and 4 × 2.50.
    expect(asked(19, 44, [{ size: '2XL', amount: 1.5 }], sizes)?.sums).toEqual({
      byList: 75400,
      ofJob: 84200,
      areAdded: true,
    });
    expect(asked(null, 44, [{ size: '2XL', amount: 1.5 }], sizes)?.sums).toEqual({
      byList: 75400,
      ofJob: 73600,
      areAdded: true,
    });
  });

  it('pays the start besides, where it is apart', () => {
    const [first = list.breaks[0]] = list.breaks;
    if (first === undefined) throw new Error('the list has no break');
    const apart = {
      ...list,
      rule: 'setUpApart' as const,
      start: cents(132),
      breaks: [{ ...first, from: 1, each: cents(12.5) }],
    };
    const told = askedAgainstList(
      {
        askedPrice: 19,
        askedStart: null,
        upCharges: [],
        quantities: [{ size: 'S', quantity: 37 }],
      },
      apart,
      { n: 37, listEach: cents(12.5) },
      'USD',
    );
    // 132 + 37 × 12.50 = 594.50 by the list; 37 × 19 = 703 as it is asked, with nothing to start.
    expect(told).toMatchObject({
      start: { listed: 13_200, asked: 0 },
      held: null,
      over: 650,
      sums: { byList: 59_450, ofJob: 70_300 },
    });
  });

  it('differs from it where nothing is asked, or another price or charge', () => {
    const at = (askedPrice: number | null, amount = 2.5) => {
      const told = asked(askedPrice, 37, [{ size: '2XL', amount }]);
      if (told === null) throw new Error('the list has no price for it');
      return differsFromList(told);
    };
    expect([at(18), at(null), at(19), at(18, 1.5)]).toEqual([false, true, true, true]);
  });

  it('compares nothing while no price is asked', () => {
    expect(asked(null, 37)).toMatchObject({ asked: null, over: 0, sizes: [] });
  });

  it('shows the rule at work on the last order before the break of the job', () => {
    const held = [
      { from: 2, to: 5, pays: cents(207) },
      { from: 19, to: 23, pays: cents(432) },
      { from: 42, to: 47, pays: cents(744) },
    ];
    // 23 × 23.50 = 540.50.
    expect(ruleAtWork(held, list, 37, 'USD')).toEqual({ n: 23, as: 24, pays: 432, instead: 540.5 });
    expect(ruleAtWork([], list, 37, 'USD')).toBeNull();
  });
});
