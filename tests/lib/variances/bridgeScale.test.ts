import { describe, expect, it } from 'vitest';
import { bridgeScale } from '@/lib/variances/bridgeScale';
import type { MinorUnits } from '@/shared/money';

const ends = (from: number, to: number) => ({ from: from as MinorUnits, to: to as MinorUnits });

function acrossCheck({ from, to, bars }: ReturnType<typeof bridgeScale>): void {
  for (const { x, width } of [from, to, ...bars]) {
    expect(x).toBeGreaterThanOrEqual(0);
    expect(width).toBeGreaterThan(0);
    expect(x + width).toBeLessThanOrEqual(100.000_001);
  }
}

describe('bridgeScale', () => {
  it('tears the bars where profit is much more than what it moved by', () => {
    const bars = [{ minor: -493 }, { minor: -715 }, { minor: -2185 }];
    const scale = bridgeScale(ends(28_837, 25_444), bars);
    expect(scale.isTorn).toBe(true);
    expect(scale.least).toBeLessThan(25_444);
    acrossCheck(scale);
  });

  it('begins at nothing where all of the profit went', () => {
    const scale = bridgeScale(ends(28_837, 100), [{ minor: -28_737 }]);
    expect(scale).toMatchObject({ isTorn: false, least: 0 });
    acrossCheck(scale);
  });

  it('holds the least that is reached on the way, below nothing too', () => {
    const scale = bridgeScale(ends(1_000, 500), [{ minor: -3_000 }, { minor: 2_500 }]);
    expect(scale).toMatchObject({ isTorn: false, least: -2_000 });
    acrossCheck(scale);
  });

  it('draws a bridge on which nothing moved', () => {
    acrossCheck(bridgeScale(ends(28_837, 28_837), []));
    acrossCheck(bridgeScale(ends(0, 0), []));
  });
});
