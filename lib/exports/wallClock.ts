import { noonOf } from '@/shared/days';

const MINUTE_MS = 60_000;
const HALF_DAY_MS = 43_200_000;
const DAY_MS = 2 * HALF_DAY_MS;

/**
 * The moment at which the clock on the wall shows a time. As RFC 5545 3.3.5 has it: what a clock shows twice is the first
 * of both, what it leaves out is reckoned as if it had not been put forward yet.
 *
 * @param minute minutes after midnight; a day has more of them than it shows
 * @param timeZone name of the zone as the device tells it, such as Europe/Berlin
 * @returns ms since 1970
 */
export function momentOf(day: string, minute: number, timeZone: string): number {
  const shown = noonOf(day) - HALF_DAY_MS + Math.round(minute) * MINUTE_MS;
  const before = shown - offsetAt(shown - DAY_MS, timeZone);
  if (shownAt(before, timeZone) === shown) return before;
  const after = shown - offsetAt(shown + DAY_MS, timeZone);
  return shownAt(after, timeZone) === shown ? after : before;
}

// Helpers

const offsetAt = (moment: number, timeZone: string): number => shownAt(moment, timeZone) - moment;

/** What a clock of the zone shows at a moment, as if that were UTC. */
function shownAt(moment: number, timeZone: string): number {
  const parts = Object.fromEntries(
    formatOf(timeZone)
      .formatToParts(moment)
      .map(({ type, value }) => [type, Number(value)]),
  );
  const { year = 0, month = 1, day = 1, hour = 0, minute = 0, second = 0 } = parts;
  return Date.UTC(year, month - 1, day, hour, minute, second);
}

const kept = new Map<string, Intl.DateTimeFormat>();

function formatOf(timeZone: string): Intl.DateTimeFormat {
  const known = kept.get(timeZone);
  if (known !== undefined) return known;
  const made = new Intl.DateTimeFormat('en-US', {
    timeZone,
    calendar: 'gregory',
    numberingSystem: 'latn',
    hourCycle: 'h23',
    ...{ year: 'numeric', month: 'numeric', day: 'numeric' },
    ...{ hour: 'numeric', minute: 'numeric', second: 'numeric' },
  });
  kept.set(timeZone, made);
  return made;
}
