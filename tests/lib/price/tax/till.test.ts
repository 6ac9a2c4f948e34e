import { describe, expect, it } from 'vitest';
import { tillOf } from '@/lib/price/tax/tillOf';
import { changed, club, clubWith, mugs } from '@/tests/fixtures/clubJob';
import { costed } from '@/tests/fixtures/costed';

const till = (input: Parameters<typeof costed>[0]) => tillOf(costed(input).laidOut.job);

describe('what the buyer pays', () => {
  it('is the club order with 7 % once for the paper: 711.50 × 1.07 = 761.305, a half up', () => {
    expect(till(club())).toEqual({
      total: { without: 71_150, tax: 4_981, with: 76_131 },
      mode: 'added',
      rounding: 'document',
      inCash: null,
    });
  });

  it('rounds on each line where the workshop says so', () => {
    // S 76.00, M 171.00, L 209.00, XL 152.00, 2XL 82.00, 3XL 21.50: 5.32 + 11.97 + 14.63 + 10.64 + 5.74 + 1.505.
    const lines = till(clubWith({ 'workshop.policy.taxRounding': 'line' }));
    expect(lines?.total).toEqual({ without: 71_150, tax: 4_981, with: 76_131 });
    // At 7.1 % the lines round by themselves: 5.40, 12.14, 14.84, 10.79, 5.82, 1.53 are 50.52; at once 50.5165.
    const other = {
      'workshop.channels.0.tax': { value: 0.071, unit: 'share', date: '2026-11-25', origin: 'yours' },
    };
    expect(till(clubWith({ ...other, 'workshop.policy.taxRounding': 'line' }))?.total.tax).toBe(5_052);
    expect(till(clubWith(other))?.total.tax).toBe(5_052);
    const tenth = {
      'workshop.channels.0.tax': { value: 0.0725, unit: 'share', date: '2026-11-25', origin: 'yours' },
    };
    // 5.51 + 12.3975 + 15.1525 + 11.02 + 5.945 + 1.55875: 5.51, 12.40, 15.15, 11.02, 5.95, 1.56 are 51.59; 51.58375.
    expect(till(clubWith({ ...tenth, 'workshop.policy.taxRounding': 'line' }))?.total.tax).toBe(5_159);
    expect(till(clubWith(tenth))?.total.tax).toBe(5_158);
  });

  it('has the tax inside at a stall: 36 mugs at 16.00 are 576.00, 37.68 of it tax', () => {
    expect(till(mugs())).toMatchObject({
      total: { without: 53_832, tax: 3_768, with: 57_600 },
      mode: 'inside',
      inCash: null,
    });
  });

  it('is rounded for coins at a stall alone, where the currency has no small ones', () => {
    // 36 mugs at 16.01 are 576.36: Canada pays 576.35 in coins.
    const input = changed(mugs(), {
      'workshop.currency': 'CAD',
      ...Object.fromEntries([0, 1, 2].map((line) => [`job.lines.${line}.askedPrice`, 16.01])),
    });
    expect(till(input)).toMatchObject({ total: { with: 57_636 }, inCash: 57_635 });
  });

  it('is nothing to be said of while a price is open or nobody has said how tax stands to it', () => {
    expect(till(clubWith({ 'job.lines.0.askedPrice': null }))).toBeNull();
    const job = costed(club()).laidOut.job;
    expect(tillOf({ ...job, channel: { ...job.channel, taxMode: null } })).toBeNull();
  });
});
