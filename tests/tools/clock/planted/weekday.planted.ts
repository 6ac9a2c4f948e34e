import { expect, test } from 'vitest';

/* What `otherDays.test.ts` has to find: right on six days of the week. */
test('the day is no Thursday', () => {
  expect(new Date().getDay()).not.toBe(4);
});
