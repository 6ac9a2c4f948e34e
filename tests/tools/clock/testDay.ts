/*
 * The one place that tests take their day from. No test sees the machine's own clock: `tests/setup.ts` sets the
 * clock of every test file to `TEST_DAY`, which is the same Wednesday on every day of the year. Whether anything
 * depends on that day is seen by running the tests on others (`TEST_CLOCK`, see `otherDays.mjs`).
 */

/** The day of the documents that tests make, and of the clock unless it is set to another. */
export const FIXED_DAY = '2026-11-25';

/** As a clock on the wall shows it, where the tests run. */
interface WallTime {
  readonly day: string;
  readonly time: string;
}

/**
 * @param setting `YYYY-MM-DDTHH:MM`; TEST_CLOCK unless told
 * @returns noon of the fixed day where nothing is set
 */
export function wallTime(setting = process.env.TEST_CLOCK): WallTime {
  if (setting === undefined || setting === '') return { day: FIXED_DAY, time: '12:00' };
  const [, day, time] = /^(\d{4}-\d\d-\d\d)T(\d\d:\d\d)$/.exec(setting) ?? [];
  if (day === undefined || time === undefined)
    throw new Error(`TEST_CLOCK is ${JSON.stringify(setting)}, not a day and time as 2026-11-25T12:00.`);
  return { day, time };
}

/** What a maker who sits at the tests' clock calls today. */
export const TEST_DAY = wallTime().day;

/** The year that stands in numbers given on that day. */
export const TEST_YEAR = Number(TEST_DAY.slice(0, 4));
