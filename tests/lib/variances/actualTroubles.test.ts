import { expect, it } from 'vitest';
import { actualTroubles } from '@/lib/variances/actualTroubles';
import { runResult } from '@/lib/variances/runResult';
import { clubPressings, clubStandard, hour, noFacts } from '@/tests/fixtures/clubStandard';

const result = (pressings = clubPressings()) =>
  runResult(
    { body: clubStandard() },
    {
      facts: { ...noFacts, pressings },
      paid: { blank: () => null, sheet: () => null },
      orderHours: [],
    },
  );

it('finds nothing to ask of the worked run', () => {
  expect(actualTroubles(result(), [hour(504, 'rest')].map(typed), clubPressings())).toEqual([]);
});

it('asks about a time of nothing, a whole night on the clock and more than 16 h on one day', () => {
  const night = hour(480, 'presses');
  const found = actualTroubles(result(), [hour(0, 'pack'), night, hour(481, 'rest')], []);
  expect(found.map(({ what }) => what)).toEqual(['noTime', 'wholeNight', 'wholeNight', 'longDay']);
  expect(found.at(-1)).toMatchObject({ day: '2026-12-12', minutes: 961 });
  expect(actualTroubles(result(), [typed(night), typed(hour(480, 'rest'))], [])).toEqual([]);
});

it('tells pieces scrapped without a cause, and more lost than were begun', () => {
  const nameless = clubPressings().map((one) => ({
    ...one,
    body: { ...one.body, fault: one.body.fault === 'ghost' ? null : one.body.fault },
  }));
  expect(actualTroubles(result(), [], nameless)).toEqual([{ what: 'withoutCause', pieces: 2 }]);
  const lost = clubPressings().filter(({ body }) => body.placementId === 'badge' && body.result === 'scrap');
  expect(actualTroubles(result(lost), [], lost)).toEqual([
    { what: 'moreLostThanStarted', lost: 2, started: 0 },
  ]);
});

// Helpers

function typed(entry: ReturnType<typeof hour>) {
  return { ...entry, body: { ...entry.body, from: 'typed' as const } };
}
