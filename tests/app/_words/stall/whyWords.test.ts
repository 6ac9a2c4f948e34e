import { describe, expect, it } from 'vitest';
import { whyWords } from '@/app/_words/stall/whyWords';
import type { GoodsPlanned } from '@/lib/stall/plan/stallPlanned';
import { fairAnswer } from '@/tests/fixtures/stallAnswer';

const reader = { locale: 'en-US', currency: 'USD' };
const [fern, otter] = ['fern', 'otter'].map((lineId) =>
  fairAnswer.goods.find((one) => one.lineId === lineId && one.size === 'L'),
) as [GoodsPlanned, GoodsPlanned];
const told = (...goods: readonly GoodsPlanned[]) => whyWords(goods, reader).join('\n');

describe('why as many are advised', () => {
  it('is the rule where nothing else decides', () => {
    // 28 ÷ 1.07 less fees of 0.60, bag and making leave a missed sale; 40 of 100 of the making are lost unsold.
    expect(told(fern)).toMatch(
      /^Fern in L: a sale that is missed loses 18\.\d\d, a piece that stays unsold 2\.\d\d\./,
    );
    expect(told({ ...fern, advised: 9, expected: 8.96 })).toContain(
      'enough on 87 of 100 days, and that takes 9. On a day of the best weather 9 are asked for on average: on some more, on some fewer.',
    );
  });

  it('is the limit where it trims, and never the rule for those goods', () => {
    const words = told({ ...fern, advisedBy: 'tablePieces', advised: 2 });
    expect(words).toMatch(/^Fern in L: the room on table and rail decides/);
    expect(words).not.toContain('it pays to have enough');
    expect(told({ ...fern, advisedBy: 'cash', advised: 2 })).toMatch(
      /^Fern in L: the cash before the first sale decides/,
    );
  });

  it('is what it costs once, told once for a design with all its sizes', () => {
    const sizes = fairAnswer.goods
      .filter(({ jobId, lineId }) => jobId === otter.jobId && lineId === 'otter')
      .map((one) => ({ ...one, advisedBy: 'onceCost', advised: 0 }) as const);
    expect(told(...sizes)).toMatch(
      /^Otter: what it brings does not pay what preparing and setting it up costs once/,
    );
  });

  it('is what lies at home where more of it does, beside the rule for others', () => {
    const words = told({ ...fern, advisedBy: 'atHome', atHome: 12, advised: 12 }, otter);
    expect(words).toMatch(/^Fern in L: as many come along as are finished already/);
    expect(words).toMatch(/\nOtter in L: a sale that is missed/);
  });
});
