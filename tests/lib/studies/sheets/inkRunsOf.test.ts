import { describe, expect, it } from 'vitest';
import { inkRunsOf } from '@/lib/studies/sheets/inkRunsOf';
import { mmFromInches } from '@/shared/units';
import { club, clubWith } from '@/tests/fixtures/clubJob';
import { costed } from '@/tests/fixtures/costed';

describe('the prints of a job, for the record of ink', () => {
  it('are those that are expected to be made, rejects and tests among them', () => {
    const { laidOut, sheet } = costed(club());
    // Back: 39.124 entering ÷ 0.98 + 2 tests = 41.92. Badge: 37.755 ÷ 0.98 = 38.53.
    expect(inkRunsOf('club-order', laidOut.job.job, sheet, laidOut.prints, '2026-11-25')).toEqual([
      {
        jobId: 'club-order',
        day: '2026-11-25',
        name: 'Ramblers Club shirts: Back picture',
        prints: 42,
        total: 1.1,
        widthMm: mmFromInches(8),
        heightMm: mmFromInches(10),
        sessions: 1,
      },
      {
        jobId: 'club-order',
        day: '2026-11-25',
        name: 'Ramblers Club shirts: Chest badge',
        prints: 39,
        total: 1.4,
        widthMm: mmFromInches(3.5),
        heightMm: mmFromInches(3.5),
        sessions: 0,
      },
    ]);
  });

  it('stand apart for sizes that have a print size of their own', () => {
    const input = clubWith({
      'job.lines.0.placements.1.prints': [
        { sizes: ['S', 'M'], widthMm: 76.2, heightMm: 76.2 },
        { sizes: null, widthMm: 88.9, heightMm: 88.9 },
      ],
    });
    const { laidOut, sheet } = costed(input);
    const runs = inkRunsOf('club-order', laidOut.job.job, sheet, laidOut.prints, '2026-11-25');
    // 13 and 24 of the 37 badges: 38.53 × 13 ÷ 37 = 13.5, × 24 ÷ 37 = 25.0.
    expect(runs.slice(1).map(({ prints, widthMm }) => [prints, widthMm])).toEqual([
      [14, 76.2],
      [25, 88.9],
    ]);
  });
});
