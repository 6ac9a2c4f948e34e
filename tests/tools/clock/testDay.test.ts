import { expect, test } from 'vitest';
import { today } from '@/app/_clock/useToday';
import { eventually } from '@/tests/tools/eventually';
import { FIXED_DAY, TEST_DAY, wallTime } from './testDay';

test('the product reads the clock of the tests, wherever and whenever they run', () => {
  expect(today()).toBe(TEST_DAY);
});

test('the clock runs on', async () => {
  const before = Date.now();
  await eventually(() => expect(Date.now()).toBeGreaterThan(before));
});

test('moments and days that are written out stay what they are', () => {
  expect(new Date(0).toISOString()).toBe('1970-01-01T00:00:00.000Z');
  expect(new Date(2028, 1, 29).getDate()).toBe(29);
  expect(Date.UTC(2028, 1, 29)).toBe(1_835_395_200_000);
  expect(new Date()).toBeInstanceOf(Date);
});

test('unless it is set the clock shows noon of the fixed day', () => {
  expect(wallTime('')).toEqual({ day: FIXED_DAY, time: '12:00' });
});

test('a clock that is set shows the day and time told', () => {
  expect(wallTime('2028-02-29T23:30')).toEqual({ day: '2028-02-29', time: '23:30' });
});

test.each(['2028-02-29', 'Thursday', '2028-2-9T1:00'])('%s is no time to set it to', (setting) => {
  expect(() => wallTime(setting)).toThrow(/TEST_CLOCK/);
});
