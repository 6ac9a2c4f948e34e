import { describe, expect, it } from 'vitest';
import type { BuyingAsked } from '@/lib/buying/buyingAsked';
import { planBuying } from '@/lib/buying/planBuying';
import type { SupplyItem } from '@/shared/schemas/making/supply';
import { club, mugs } from '@/tests/fixtures/clubJob';
import { grid } from '@/tests/fixtures/costed';
import { asked, lying, work } from './asked';

const plan = (of: BuyingAsked = asked()) => planBuying(of, grid);
const paper: SupplyItem = { kind: 'paper', sheetId: 'letter' };

describe('several works', () => {
  it('that share nothing have the blanks that the sheet of each lays out', () => {
    const { covers } = plan(asked({ works: [work(), work(mugs(), { jobId: 'mugs' })] }));
    const [, usual] = covers;
    expect(usual?.sizes.slice(0, 6).map(({ take }) => take)).toEqual([5, 11, 13, 10, 5, 1]);
    expect(usual?.everySize).toBeGreaterThanOrEqual(0.75);
    expect(usual?.everyWork).toBeLessThan(0.75);
  });

  it('that share sizes share the spares, and one freight', () => {
    const works = [work(), work(club(), { jobId: 'again' })];
    const { apart, covers, suppliers } = plan(asked({ works }));
    const [, usual] = covers;
    expect(usual?.sizes[0]?.pieces).toBe(8);
    expect(usual?.bought).toBeLessThan(90);
    expect(usual?.everyWork).toBe(usual?.everySize);
    // Twice 235.26 apart.
    expect(apart?.totalMinor).toBe(47_052);
    expect(apart?.savingMinor).toBeGreaterThan(950);
    expect(suppliers[0]?.freightMinor).toBe(950);
    expect(suppliers[0]?.freightByWorkMinor).toEqual([475, 475]);
    expect(plan().apart).toBeNull();
  });

  it('of one order are not parted', () => {
    const works = [work(club(), { orderId: 'one' }), work(club(), { jobId: 'again', orderId: 'one' })];
    expect(plan(asked({ works })).apart).toBeNull();
  });

  it('apart give what lies here to the first that needs it', () => {
    const works = [work(), work(mugs(), { jobId: 'mugs' })];
    const without = plan(asked({ works })).apart;
    const piles = [lying(paper, 100)];
    // 58 sheets for the shirts leave 42 for the mugs: all of theirs but those beyond 42.
    const found = plan(asked({ works, piles })).apart;
    const alone = plan(asked({ works: [work(mugs(), { jobId: 'mugs' })] })).rows.find(
      ({ item }) => item.kind === 'paper',
    );
    const saved = 58 + Math.min(42, alone?.need ?? 0);
    expect((without?.totalMinor ?? 0) - (found?.totalMinor ?? 0)).toBe(saved * 14);
  });
});
