import { describe, expect, it } from 'vitest';
import { dayFormat } from '@/app/_words/dayFormat';
import { wantedDayWords } from '@/app/_words/docket/jobWords';

const day = new Date('2026-12-18T00:00:00Z');

describe('a day among English sentences', () => {
  it.each([
    ['en-US', 'Dec 18, 2026', 'Friday, December 18'],
    ['en-GB', '18 Dec 2026', 'Friday 18 December'],
    ['de-DE', '18 Dec 2026', 'Friday 18 December'],
    ['fr-FR', '18 Dec 2026', 'Friday 18 December'],
  ])('has English months in the order of %s', (locale, short, long) => {
    expect(dayFormat(locale).format(day)).toBe(short);
    expect(wantedDayWords('2026-12-18', '2026-11-26', locale)).toBe(long);
  });

  it('says the year where it is another', () => {
    expect(wantedDayWords('2027-01-08', '2026-11-26', 'de-DE')).toBe('Friday, 8 January 2027');
  });
});
