import { describe, expect, it } from 'vitest';
import { recipeLogs } from '@/lib/pressing/recipeLogs';
import { nextMove, testTrail } from '@/lib/pressing/testTrail';
import { addDays } from '@/shared/days';
import type { Recipe } from '@/shared/schemas/job';
import { type PressTest, pressTestSchema } from '@/shared/schemas/making/pressLog';
import { goodsInSchema } from '@/shared/schemas/making/supplyEvents';
import { clubRecipe, clubStandard, pieceOf, pressedOn, RUN, STANDARD } from '@/tests/fixtures/clubPressing';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

const entry = <Kind extends string, Body>(kind: Kind, count: number, body: Body) => ({
  ...{ id: `dev-${count}`, kind, device: 'pressphone1', count, at: count * 60_000, body },
});
const test = (count: number, more: Partial<PressTest> = {}, recipe: Partial<Recipe> = {}) =>
  entry(
    'pressTest',
    count,
    pressTestSchema.parse({
      ...{ day: TEST_DAY, blankId: 'tee', pressId: 'flat', recipe: { ...clubRecipe, ...recipe } },
      ...{ scores: { density: 5 }, ...more },
    }),
  );
const arrival = (count: number, lot: string | null, blankId = 'tee') =>
  entry(
    'goodsIn',
    count,
    goodsInSchema.parse({
      ...{ day: TEST_DAY, currency: 'USD' },
      rows: [
        {
          item: { kind: 'blank', blankId, size: 'M' },
          ...{ ordered: 10, counted: 10, faulty: 0, lot, amountMinor: null },
        },
      ],
    }),
  );
const pieces = (marks: string, from: number) =>
  pressedOn(
    [...marks].map((mark) => pieceOf('M', mark === 'x' ? 'scrap' : 'good')),
    'pressphone1',
    from,
  ).map((one) => ({ ...one, kind: 'pressing' as const }));
const standards = [{ id: STANDARD, body: clubStandard }];
const NONE = { pressings: [], tests: [], washes: [], goodsIn: [], standards };

describe('recipeLogs', () => {
  it('puts tests and pieces of a recipe together, with its runs, newest first', () => {
    const { recipes, withoutRecipe } = recipeLogs({
      ...NONE,
      tests: [test(1), test(2)],
      pressings: pieces('..x', 10),
    });
    expect(withoutRecipe).toEqual([]);
    expect(recipes).toHaveLength(1);
    expect(recipes[0]).toMatchObject({
      blankId: 'tee',
      pressId: 'flat',
      standing: { tests: 2, good: 2, scrap: 1 },
    });
    expect(recipes[0]?.tests.map(({ count }) => count)).toEqual([2, 1]);
    expect(recipes[0]?.runs).toEqual([
      { runId: RUN, title: 'Ramblers', prints: ['Back'], good: 2, seconds: 0, scrap: 1, lastAt: 12 * 60_000 },
    ]);
  });

  it('keeps another setting, blank or press apart', () => {
    const { recipes } = recipeLogs({
      ...NONE,
      tests: [
        test(1),
        test(2, {}, { dwellSeconds: 60 }),
        test(3, { blankId: 'mug' }),
        test(4, { pressId: 'oven' }),
      ],
    });
    expect(recipes).toHaveLength(4);
  });

  it('tells pieces that no standard here names, and counts them for no recipe', () => {
    const { recipes, withoutRecipe } = recipeLogs({ ...NONE, standards: [], pressings: pieces('..', 1) });
    expect([recipes.length, withoutRecipe.length]).toEqual([0, 2]);
  });

  it('takes presses back with a new lot of its cloth, and not with the same, an unnamed or another blank’s', () => {
    const fell = (...goodsIn: ReturnType<typeof arrival>[]) =>
      recipeLogs({ ...NONE, tests: [test(1, { lot: 'A' })], pressings: pieces('...', 5), goodsIn }).recipes[0]
        ?.standing;
    expect(fell(arrival(20, 'B'))).toMatchObject({ good: 0, fellBy: 'newLot' });
    expect(fell(arrival(20, 'A'))).toMatchObject({ good: 3, fellBy: null });
    expect(fell(arrival(20, null))).toMatchObject({ good: 3, fellBy: null });
    expect(fell(arrival(20, 'B', 'mug'))).toMatchObject({ good: 3, fellBy: null });
  });

  it('takes presses back with a test on new paper or ink', () => {
    const { recipes } = recipeLogs({
      ...NONE,
      tests: [test(1, { inkLot: '7' }), test(30, { inkLot: '8' })],
      pressings: pieces('...', 5),
    });
    expect(recipes[0]?.standing).toMatchObject({ good: 0, fellBy: 'newLot', tests: 2 });
  });

  it('takes three tests in a row as the log lists them: by their days, and of a day as they were noted', () => {
    const of = (tests: readonly ReturnType<typeof test>[]) =>
      recipeLogs({ ...NONE, tests }).recipes[0]?.standing.tests;
    const bad = { faults: ['pale' as const] };
    const before = { day: addDays(TEST_DAY, -1) };
    // Passed the day before and noted last: failed stands between it and the two that passed.
    expect(of([test(1, bad), test(2), test(3), test(4, before)])).toBe(2);
    // Failed the day before and noted between: the three that passed stand together.
    expect(of([test(1), test(2, { ...bad, ...before }), test(3), test(4)])).toBe(3);
    // Two devices, one after the other by the clock.
    const other = { ...test(2, bad), device: 'pressphone2', count: 1, id: 'other-1' };
    expect(of([test(1), test(3), other])).toBe(1);
    expect(of([other, test(3), test(1)])).toBe(1);
  });

  it('comes to the same in any order', () => {
    const notes = {
      ...NONE,
      tests: [test(1, { lot: 'A' }), test(30, { lot: 'B' }, { dwellSeconds: 60 })],
      pressings: pieces('..x.xx', 5),
      goodsIn: [arrival(20, 'B')],
    };
    const turned = {
      ...notes,
      tests: notes.tests.toReversed(),
      pressings: notes.pressings.toReversed(),
    };
    expect(recipeLogs(turned)).toEqual(recipeLogs(notes));
  });
});

describe('testTrail', () => {
  const use = { blankId: 'tee', pressId: 'flat' };
  const trailOf = (...tests: ReturnType<typeof test>[]) => testTrail(tests, use);

  it('says what was changed since the test before, and when two things were', () => {
    const trail = trailOf(
      test(3, {}, { dwellSeconds: 60, temperature: { value: 395, unit: 'F' } }),
      test(1),
      test(2, {}, { dwellSeconds: 60 }),
      test(4, { blankId: 'mug' }),
      test(5, { paperLot: 'P2' }),
    );
    expect(trail.map(({ changed, isSeveral }) => [changed, isSeveral])).toEqual([
      [null, false],
      [['dwell'], false],
      [['temperature'], false],
      [['temperature', 'dwell'], true],
    ]);
  });

  it('names the first move of a fault, and the one after what was tried', () => {
    const trail = trailOf(
      test(1, { faults: ['pale'] }),
      test(2, { faults: ['pale', 'ghost'] }, { dwellSeconds: 62 }),
      test(3, { faults: ['pale'] }, { dwellSeconds: 62, temperature: { value: 395, unit: 'F' } }),
    );
    expect(trail.map(({ next }) => next)).toEqual([
      [{ fault: 'pale', move: 'dwellLonger' }],
      [
        { fault: 'pale', move: 'hotter' },
        { fault: 'ghost', move: 'tapeCoolLift' },
      ],
      [{ fault: 'pale', move: 'measurePlaten' }],
    ]);
  });

  it('knows nothing more once the last was tried, and nothing of what cannot be named', () => {
    expect(nextMove('reversed', ['mirrorCheck'])).toBeNull();
    expect(nextMove('other')).toBeNull();
  });
});
