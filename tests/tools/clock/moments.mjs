/** @typedef {{ clock: string, zone: string }} Moment a clock on the wall of a place */

const ZONES = ['UTC', 'America/Los_Angeles', 'Pacific/Auckland'];

/** A fortnight from a Monday. The day in Greenwich is another than theirs in the early and the late hours. */
const TIMES = ['00:15', '12:00', '23:45'];
const fortnight = Array.from({ length: 14 }, (_, index) => {
  const day = new Date(Date.UTC(2026, 10, 23 + index)).toISOString().slice(0, 10);
  return `${day}T${TIMES[index % TIMES.length]}`;
});

/** A leap day, the last of a year, and the nights in which each zone puts its clocks forward and back. */
const rare = [
  '2028-02-29T23:45',
  '2026-12-31T23:45',
  '2027-03-14T01:59',
  '2027-11-07T01:30',
  '2027-04-04T02:30',
  '2027-09-26T01:59',
];

/**
 * Every day of the grid in every zone.
 *
 * @type {readonly Moment[]}
 */
export const allMoments = ZONES.flatMap((zone) => [...fortnight, ...rare].map((clock) => ({ clock, zone })));

/**
 * When the unit tests of `npm test` think they run: a Thursday, on which work reckoned back meets a weekend, so late
 * that it is Friday in Greenwich. Run alone, they have noon of the Wednesday before.
 *
 * @type {Moment}
 */
export const awkwardMoment = { clock: '2026-11-26T23:45', zone: 'America/Los_Angeles' };
