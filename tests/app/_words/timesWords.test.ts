import { describe, expect, it } from 'vitest';
import { beginWords } from '@/app/_words/making/sheet/timesWords';

const print = (day: string, minutes: number) =>
  ({ what: 'print', name: '', session: null, day, fromMinute: 1080, minutes }) as const;

describe('when sheets are printed, on paper', () => {
  it('is the beginning and how long it takes', () => {
    expect(beginWords([print('2026-12-04', 132.2)], 'en-GB')).toMatch(/^Fri,? 4 Dec 18:00, 2 h 12 min$/);
    expect(beginWords([], 'en-GB')).toBe('');
  });

  it('is told of each day, for sheets of several heatings-up are printed on several', () => {
    const words = beginWords([print('2026-12-04', 68), print('2026-12-11', 64)], 'en-GB');
    expect(words).toMatch(/^Fri,? 4 Dec 18:00, 1 h 8 min; Fri,? 11 Dec 18:00, 1 h 4 min$/);
  });
});
