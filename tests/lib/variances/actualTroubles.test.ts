import { expect, it } from 'vitest';
import { actualTroubles, isTimeDoubtful } from '@/lib/variances/actualTroubles';
import { runResult } from '@/lib/variances/runResult';
import type { RunStandard } from '@/shared/schemas/making/runPapers';
import { clubPressings, clubStandard, hour, noFacts, noteOf } from '@/tests/fixtures/clubStandard';

const result = (pressings = clubPressings()) =>
  runResult(
    { body: enough(clubStandard()) },
    {
      facts: { ...noFacts, pressings },
      paid: { blank: () => null, sheet: () => null },
      orderHours: [],
    },
  );

/** The worked run laid out 11 M and 13 L, with one spare of every other size. */
const laidOut = { M: 11, L: 13 } as const;
const isEnough = (size: string): size is keyof typeof laidOut => Object.hasOwn(laidOut, size);

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

it('asks about 12 h typed in one go, and calls the pay of an hour doubtful with it', () => {
  const found = actualTroubles(result(), [hour(720, 'rest')].map(typed), []);
  expect(found).toMatchObject([{ what: 'longNote', minutes: 720 }]);
  expect(isTimeDoubtful(found)).toBe(true);
  expect(actualTroubles(result(), [hour(719, 'rest')].map(typed), [])).toEqual([]);
  expect(isTimeDoubtful([{ what: 'withoutCause', pieces: 2 }])).toBe(false);
});

it('tells that more went into the first press than was laid out, by size', () => {
  // The fixture lays out one spare of each size: 10 M and 12 L, of which 11 and 13 were begun.
  const found = actualTroubles(
    runResult(
      { body: clubStandard() },
      {
        facts: { ...noFacts, pressings: clubPressings() },
        paid: { blank: () => null, sheet: () => null },
        orderHours: [],
      },
    ),
    [],
    [],
  );
  expect(found).toEqual([{ what: 'moreThanLaidOut', sizes: ['M', 'L'], started: 24, laidOut: 22 }]);
});

it('counts blanks that designs share together, and those a customer brought by their job', () => {
  // The other design has 20 M and L of the same blank laid out, 10 each, and presses none: 24 of 42.
  expect(actualTroubles(beside('white-shirt', false), [], [])).toEqual([]);
  const own = [{ what: 'moreThanLaidOut', sizes: ['M', 'L'], started: 24, laidOut: 22 }];
  expect(actualTroubles(beside('black-shirt', false), [], [])).toEqual(own);
  expect(actualTroubles(beside('white-shirt', true), [], [])).toEqual(own);
});

it('tells more than a whole shared stack held', () => {
  // 11 M and 13 L of the club and 11 of each of the other, of 20 M and 22 L laid out.
  const more = ['M', 'L'].flatMap((size) => Array.from({ length: 11 }, () => pieceOfOther(size)));
  expect(actualTroubles(beside('white-shirt', false, more), [], [])).toEqual([
    { what: 'moreThanLaidOut', sizes: ['M', 'L'], started: 46, laidOut: 42 },
  ]);
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

/** The worked run as the fixture lays it out, 10 M and 12 L, beside another job with 10 of each on a blank. */
function beside(blankId: string, isBrought: boolean, more: ReturnType<typeof clubPressings> = []) {
  const standard = clubStandard();
  const other = standard.works.map((work) => ({
    ...work,
    jobId: 'other',
    lines: work.lines.map((line) => ({
      ...{ ...line, blankId, isBrought },
      sizes: line.sizes
        .filter(({ size }) => isEnough(size))
        .map((size) => ({ ...size, wanted: 9, take: 10 })),
    })),
  }));
  return runResult(
    { body: { ...standard, works: [...standard.works, ...other] } },
    {
      facts: { ...noFacts, pressings: [...clubPressings(), ...more] },
      paid: { blank: () => null, sheet: () => null },
      orderHours: [],
    },
  );
}

function pieceOfOther(size: string) {
  const body = {
    runId: 'run',
    standardId: null,
    jobId: 'other',
    lineId: 'shirts',
    placementId: 'back',
    size,
  };
  return noteOf('pressing', { ...body, result: 'good' as const, fault: null });
}

function enough({ works, ...rest }: RunStandard): RunStandard {
  return {
    ...rest,
    works: works.map((work) => ({
      ...work,
      lines: work.lines.map((line) => ({
        ...line,
        sizes: line.sizes.map((one) => (isEnough(one.size) ? { ...one, take: laidOut[one.size] } : one)),
      })),
    })),
  };
}

function typed(entry: ReturnType<typeof hour>) {
  return { ...entry, body: { ...entry.body, from: 'typed' as const } };
}
