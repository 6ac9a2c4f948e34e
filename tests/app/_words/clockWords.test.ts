import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { momentWords } from '@/app/_copies/momentWords';
import { clockWords } from '@/app/_words/clockWords';
import { formatterFor } from '@/app/_words/formatter';
import { busiestWords, hourWords } from '@/app/_words/stall/count/moreWords';
import { closedOnWords } from '@/app/_words/stall/evening/resultWords';
import { stallLineWords } from '@/app/_words/stall/stallHeadWords';
import { blockWords } from '@/app/_words/workshop/hoursWords';
import { exampleWorkshop } from '@/lib/examples/exampleWorkshop';
import { fairAsked } from '@/tests/fixtures/fairAsked';
import { TEST_DAY } from '@/tests/tools/clock/testDay';
import { projectSources } from '@/tests/tools/floors/projectSources';

const { units } = exampleWorkshop(TEST_DAY);
const contextOf = (locale: string) => ({ locale, units, currency: 'USD' });

/** Some places part the time from its “PM” by a narrow space, some browsers by a common one. */
const plain = (words: string | null) => words?.replace(/\s/g, ' ');

describe('a time of day', () => {
  it.each([
    ['en-US', ['12:00 AM', '9:05 AM', '12:00 PM', '2:10 PM', '11:59 PM']],
    ['en-GB', ['00:00', '09:05', '12:00', '14:10', '23:59']],
    ['de-DE', ['00:00', '09:05', '12:00', '14:10', '23:59']],
    ['ar-EG', ['00:00', '09:05', '12:00', '14:10', '23:59']],
  ])('is written as a clock of %s shows it', (locale, words) => {
    const minutes = [0, 9 * 60 + 5, 12 * 60, 14 * 60 + 10, 23 * 60 + 59];
    expect(minutes.map((minute) => plain(clockWords(minute, locale)))).toEqual(words);
  });

  it('begins anew after midnight, and is of whole minutes', () => {
    expect(clockWords(24 * 60 + 90, 'en-GB')).toBe('01:30');
    expect(clockWords(604.6, 'en-GB')).toBe('10:05');
  });

  it('is written nowhere else on the screen', () => {
    const writers = projectSources(fileURLToPath(new URL('../../..', import.meta.url)))
      .filter(
        ({ path, text }) => path.startsWith('app/') && /timeStyle: |hour: '|toLocale\w*String\(/.test(text),
      )
      .map(({ path }) => path);
    expect(writers).toEqual(['app/_words/clockWords.ts']);
  });
});

describe.each([
  ['en-US', '2:10 PM', '10:00 AM to 5:00 PM', '11:00 PM to 12:00 AM', 'Monday 6:00 PM to 7:00 PM'],
  ['en-GB', '14:10', '10:00 to 17:00', '23:00 to 00:00', 'Monday 18:00 to 19:00'],
])('in %s every sentence writes it so', (locale, tenPastTwo, open, lastHour, block) => {
  const moment = new Date(`${TEST_DAY}T14:10`);
  const day = formatterFor(contextOf(locale)).day(TEST_DAY);

  it('of a moment', () => {
    expect(plain(momentWords(moment.getTime(), contextOf(locale)))).toBe(`${day}, ${tenPastTwo}`);
  });

  it('of the close of a stall day', () => {
    const closed = closedOnWords(
      { day: TEST_DAY, minute: 850 },
      '1',
      formatterFor(contextOf(locale)),
      locale,
    );
    expect(plain(closed)).toBe(`Closed ${day}, ${tenPastTwo}, number 1.`);
  });

  it('of the hours of a stall day', () => {
    const stallDay = {
      ...fairAsked.stallDay,
      days: [{ id: 'one', day: TEST_DAY, fromMinute: 600, toMinute: 1020, weight: 1 }],
    };
    expect(plain(stallLineWords(stallDay, TEST_DAY, locale))).toContain(`, ${open}, `);
  });

  it('of an hour in which something sold, and of the best one', () => {
    expect(plain(hourWords(23, locale))).toBe(lastHour);
    const hours = [
      { day: TEST_DAY, hour: 22, pieces: 3 },
      { day: TEST_DAY, hour: 23, pieces: 12 },
      { day: TEST_DAY, hour: 24, pieces: 4 },
    ];
    expect(plain(busiestWords(hours, locale))).toBe(`most ${lastHour}, 12 sold`);
  });

  it('of a free block of the week', () => {
    expect(plain(blockWords({ id: 'b', weekday: 0, fromMinute: 1080, minutes: 60 }, locale))).toBe(block);
  });
});
