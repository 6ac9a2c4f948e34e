import { describe, expect, it } from 'vitest';
import { compareItem, type ItemState } from '@/lib/priceLists/compareItem';
import type { FrozenItem } from '@/shared/schemas/priceList';
import type { JobInput } from '@/shared/schemas/request';
import { grid } from '@/tests/fixtures/costed';
import { frozen, plainItem } from './plainItem';

const before = plainItem();
const item = frozen(before);

const compare = (input: JobInput, of: FrozenItem = item): ItemState =>
  compareItem(input, grid, { item: of, currency: 'USD', taxMode: 'none' });

function compared(...asked: Parameters<typeof compare>): Extract<ItemState, { kind: 'compared' }> {
  const state = compare(...asked);
  if (state.kind !== 'compared') throw new Error(JSON.stringify(state));
  return state;
}

describe('an issued item held against today', () => {
  it('holds while nothing has moved', () => {
    expect(compared(before)).toEqual({ kind: 'compared', worn: [], moved: [], aged: [], goneSizes: [] });
  });

  it('says which price leaves less, by how much, what it would be today, and which rate moved', () => {
    // The blank at 7.20: 2.80 of 10.00 are left, and 40 % takes 12.00.
    const { worn, moved } = compared(plainItem({ blank: 7.2 }));
    expect(worn.map(({ from, to, at, listed, today }) => [from, to, listed / at, today / at])).toEqual([
      [1, 9, 1000, 1200],
      [10, null, 1000, 1200],
    ]);
    for (const { marginThen, marginNow } of worn) {
      expect(marginThen).toBeCloseTo(0.4, 10);
      expect(marginNow).toBeCloseTo(0.28, 10);
    }
    expect(moved.map(({ was, is, unit }) => [was, is, unit])).toEqual([[6, 7.2, 'money/piece']]);
  });

  it('holds while a price that had something to spare still leaves what it was made for', () => {
    // 40 % of 5.80 takes 9.67, written 10.00: that leaves 42 %. At 6.00 it is 40 %, at 6.05 it is 39.5 %.
    const spare = frozen(plainItem({ blank: 5.8 }));
    expect(spare.breaks[0]?.leastMargin).toBeCloseTo(0.42, 10);
    expect(compared(plainItem({ blank: 6 }), spare).worn).toEqual([]);
    expect(compared(plainItem({ blank: 6.05 }), spare).worn).toHaveLength(2);
  });

  it('holds a price of the maker’s own, made for less than the target, to what it left then', () => {
    // 9.00 leave a third; at 6.00 still, at 6.30 only three tenths.
    const own = { ownPrices: [{ from: 10, each: 9 }] };
    const cheap = frozen(plainItem({ line: own }));
    expect(compared(plainItem({ line: own }), cheap).worn).toEqual([]);
    const { worn } = compared(plainItem({ blank: 6.3, line: own }), cheap);
    expect(worn.map(({ from }) => from)).toEqual([1, 10]);
    expect(worn[1]?.marginThen).toBeCloseTo(1 / 3, 10);
    expect(worn[1]?.marginNow).toBeCloseTo(0.3, 10);
  });

  it('holds set-up apart to what orders pay by it', () => {
    // 50 to start and 10 a piece. With the blank at 7.20, 2,000 pay 20,050.00 and cost 14,430.00;
    // (30 + 7.2 n) ÷ 0.6 would be 50 to start and 12 a piece.
    const line = { selling: 'setUpApart' } as const;
    const tariff = frozen(plainItem({ freight: 30, line }));
    const { worn } = compared(plainItem({ blank: 7.2, freight: 30, line }), tariff);
    expect(worn.map(({ at, listed, today }) => [at, listed, today])).toEqual([[2000, 2_005_000, 2_405_000]]);
    expect(worn[0]?.marginNow).toBeCloseTo(5620 / 20_050, 10);
  });

  it('holds where a rate fell, and still says that it moved', () => {
    const { worn, moved } = compared(plainItem({ blank: 5 }));
    expect(worn).toEqual([]);
    expect(moved.map(({ was, is }) => [was, is])).toEqual([[6, 5]]);
  });

  it('names rates that nobody has looked at for more than ninety days, and none that are only typical', () => {
    // The rates are of 25 November 2026; the ninetieth day after is 23 February.
    const ages = (asOf: string) => compared({ ...before, asOf }).aged.map(({ days }) => days);
    expect(ages('2027-02-23')).toEqual([]);
    expect(new Set(ages('2027-02-24'))).toEqual(new Set([91]));
    const labels = compared({ ...before, asOf: '2027-02-24' }).aged.map(({ label }) => label);
    expect(labels).toContainEqual(expect.stringContaining('size 1'));
  });

  it('names sizes that the line no longer has', () => {
    const more = { ...item, sizes: [...item.sizes, { size: '5XL', upCharge: 300 }] };
    expect(compared(before, more).goneSizes).toEqual(['5XL']);
  });

  it('says that the line is gone', () => {
    expect(compare(plainItem({ line: { id: 'other' } }))).toEqual({ kind: 'noLine' });
  });

  it('compares no prices that are written in other money or with other tax', () => {
    const terms = { item, currency: 'USD', taxMode: 'none' } as const;
    expect(compareItem(before, grid, { ...terms, currency: 'EUR' })).toEqual({ kind: 'otherTerms' });
    expect(compareItem(before, grid, { ...terms, taxMode: 'inside' })).toEqual({ kind: 'otherTerms' });
  });

  it('says which stop keeps the job from being priced, as a blank that was removed', () => {
    expect(compare({ ...before, blanks: {} })).toMatchObject({ kind: 'stopped', why: { id: 'DOC-02' } });
  });
});
