import { describe, expect, it } from 'vitest';
import { scrapRange } from '@/lib/studies/curve/scrapRange';
import { spoilageSpread } from '@/lib/studies/curve/spoilageSpread';
import { club, clubWith } from '@/tests/fixtures/clubJob';
import { costed, grid } from '@/tests/fixtures/costed';

const wanted = [{ n: 37, priceEach: 20 }];
const share = { unit: 'share', date: '2026-11-25' } as const;

describe('spoilageSpread', () => {
  it('is the job with little and with much spoiled', () => {
    const [spread] = spoilageSpread(costed(club()), grid, wanted, { back: { low: 0.01, high: 0.08 } });
    const at = (value: number) =>
      costed(clubWith({ 'job.lines.0.placements.0.scrap': { ...share, value, origin: 'yours' } })).sheet
        .fullCost;
    expect(spread?.best?.fullCost).toBeCloseTo(at(0.01), 9);
    expect(spread?.worst?.fullCost).toBeCloseTo(at(0.08), 9);
  });

  it('has no width where nothing is in doubt', () => {
    const [spread] = spoilageSpread(costed(club()), grid, wanted, {});
    expect(spread?.best).toEqual(spread?.worst);
  });
});

describe('scrapRange', () => {
  it('is Wilson’s interval where the share was counted', () => {
    // NIST/SEMATECH e-Handbook 7.2.4.1: 26 of 200; two-sided 95 % worked out to 0.090282 and 0.183664.
    const range = scrapRange({ ...share, value: 0.13, origin: 'measured', count: 200 });
    expect(range.low).toBeCloseTo(0.090282, 6);
    expect(range.high).toBeCloseTo(0.183664, 6);
  });

  it('is half to twice a share that nobody counted', () => {
    expect(scrapRange({ ...share, value: 0.02, origin: 'typical' })).toEqual({ low: 0.01, high: 0.04 });
    expect(scrapRange({ ...share, value: 0.6, origin: 'yours' })).toEqual({ low: 0.3, high: 0.9 });
  });
});
