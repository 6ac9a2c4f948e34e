import { expect, it } from 'vitest';
import { dayLoadWords, dayPressWords } from '@/app/_words/stall/dayLoadWords';
import { addDays } from '@/shared/days';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

const days = [TEST_DAY, addDays(TEST_DAY, 1)];
const said = { today: TEST_DAY, locale: 'en-US' };

it('two days are told what each has on its table, and what of the pressing can wait', () => {
  expect(dayLoadWords(days, [60, 36], said)).toBe(
    '60 on the table for today, 36 more overnight for tomorrow, by the visitors of each day.',
  );
  expect(dayPressWords(days, [40, 20], said)).toBe(
    '40 of these pieces are needed for today; 20 can wait until tomorrow if need be.',
  );
});

it('one day is told nothing of days', () => {
  expect(dayLoadWords(days.slice(1), [96], said)).toBeNull();
  expect(dayPressWords(days.slice(1), [96], said)).toBeNull();
});
