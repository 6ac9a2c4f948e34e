import { describe, expect, it } from 'vitest';
import { type ShopTerms, statementDue } from '@/lib/stall/shops/statementDue';

const terms: ShopTerms = {
  commissionShare: 0.4,
  commissionBase: 'withTax',
  taxMode: 'inside',
  tax: 0.07,
  bears: 'maker',
  currency: 'USD',
};
const row = (sold: number, eachMinor: number, missing = 0) => ({ sold, missing, eachMinor });
const due = (changes: Partial<ShopTerms>, ...rows: ReturnType<typeof row>[]) => {
  const found = statementDue(rows, { ...terms, ...changes });
  if (found === null) throw new Error('beyond reach');
  const { grossMinor, commissionMinor, dueMinor } = found;
  return [grossMinor, commissionMinor, dueMinor];
};

/* All by hand; three pieces at 28.00 are 84.00. */
describe('what a shop owes at 60/40', () => {
  it.each<[string, Partial<ShopTerms>, readonly number[]]>([
    // 40 % of 84.00.
    ['of the price with the tax that is inside', {}, [8400, 3360, 5040]],
    // 84.00 ÷ 1.07 = 78.5047; 40 % of it is 31.4019.
    ['of the price without the tax that is inside', { commissionBase: 'withoutTax' }, [8400, 3140, 5260]],
    // 84.00 × 1.07 = 89.88; 40 % of it is 35.952.
    ['with tax that is added later', { taxMode: 'added' }, [8400, 3595, 4805]],
    [
      'without tax that is added later',
      { taxMode: 'added', commissionBase: 'withoutTax' },
      [8400, 3360, 5040],
    ],
    ['where there is no tax', { taxMode: 'none', commissionBase: 'withoutTax' }, [8400, 3360, 5040]],
  ])('%s', (_, changes, expected) => expect(due(changes, row(3, 2800))).toEqual(expected));

  it('is not worked out beyond what is kept exact to the cent', () => {
    // 2,000 pieces at a million: two thousand millions.
    expect(statementDue([row(2000, 1e8)], terms)).toBeNull();
    expect(due({}, row(100, 1e8))).toEqual([1e10, 4e9, 6e9]);
    // Five hundred millions are, a cent more is not.
    expect(due({}, row(1, 5e10))).toEqual([5e10, 2e10, 3e10]);
    expect(statementDue([row(1, 5e10), row(1, 1)], terms)).toBeNull();
  });

  it('is rounded once on the sum, half a coin to the shop', () => {
    // 40 % of 3 × 0.05 = 0.06 in one sum; rounded row by row it would be 3 × 0.02.
    expect(due({}, row(1, 5), row(1, 5), row(1, 5))).toEqual([15, 6, 9]);
    // 25 % of 0.10 is 0.025, which goes up to 0.03.
    expect(due({ commissionShare: 0.25 }, row(1, 10))).toEqual([10, 3, 7]);
    // 35 % of 2.70 is 0.945, as doubles 0.9449…: still half a coin.
    expect(due({ commissionShare: 0.35 }, row(1, 270))).toEqual([270, 95, 175]);
  });

  it('counts missing pieces only where the shop bears them', () => {
    expect(due({}, row(2, 2800, 1))).toEqual([5600, 2240, 3360]);
    expect(due({ bears: null }, row(2, 2800, 1))).toEqual([5600, 2240, 3360]);
    expect(due({ bears: 'shop' }, row(2, 2800, 1))).toEqual([8400, 3360, 5040]);
  });

  it('goes by the coins of its currency', () => {
    // 40 % of 1,250 yen.
    expect(due({ currency: 'JPY' }, row(1, 1250))).toEqual([1250, 500, 750]);
    // 25 % of 2.505 dinars is 0.62625, of which there are thousandths.
    expect(due({ currency: 'KWD', commissionShare: 0.25 }, row(1, 2505))).toEqual([2505, 626, 1879]);
  });
});
