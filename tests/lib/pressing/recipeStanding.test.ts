import { describe, expect, it } from 'vitest';
import { recipeKey } from '@/lib/pressing/recipeKey';
import { passChance, type RecipeEvent, recipeStanding } from '@/lib/pressing/recipeStanding';
import { scrapAlarms } from '@/lib/pressing/scrapAlarms';
import { type PressTest, pressTestSchema, washCheckSchema } from '@/shared/schemas/making/pressLog';
import { clubRecipe, pieceOf, pressedOn } from '@/tests/fixtures/clubPressing';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

const use = { blankId: 'tee', pressId: 'flat', recipe: clubRecipe };
const NONE = pressTestSchema.shape.scores.parse({});
const test = (scores: Partial<PressTest['scores']>, faults: PressTest['faults'] = []): RecipeEvent => ({
  what: 'tested',
  test: pressTestSchema.parse({ ...use, day: TEST_DAY, scores: { ...NONE, ...scores }, faults }),
});
const wash = (cycles: number, grade: number): RecipeEvent => ({
  what: 'washed',
  check: washCheckSchema.parse({ ...use, day: TEST_DAY, cycles, grade }),
});
/** A dot came good, an x was lost, an s is a second. */
const row = (marks: string): readonly RecipeEvent[] =>
  pressedOn(
    [...marks].map((mark) => pieceOf('M', mark === 'x' ? 'scrap' : mark === 's' ? 'second' : 'good')),
  ).map((entry) => ({ what: 'pressed', entry }));
const good = test({ density: 4, sharpness: 5 });
const three = [good, good, good];
const THIRTY = '.'.repeat(30);
const state = (...events: readonly RecipeEvent[]) => recipeStanding(events).state;

describe('recipeStanding', () => {
  it('is tested after three tests in a row with every score 4 or more', () => {
    expect(state(good, good)).toBe('draft');
    expect(state(...three)).toBe('tested');
    expect(state(good, good, test({ density: 5, ghost: 3 }), good, good)).toBe('draft');
    expect(state(good, good, test({ density: 3 }), ...three)).toBe('tested');
  });

  it('takes no test for good that scored nothing or names a fault', () => {
    expect(state(good, good, test({}))).toBe('draft');
    expect(state(good, good, test({ density: 5 }, ['ghost']))).toBe('draft');
  });

  it('is proven by 30 good presses with at most one lost, and five washes at grade 4', () => {
    expect(state(...three, ...row(THIRTY), wash(5, 4))).toBe('proven');
    expect(state(...three, ...row(`x${THIRTY}`), wash(5, 4.5))).toBe('proven');
    expect(state(...three, ...row(THIRTY.slice(1)), wash(5, 4))).toBe('tested');
    expect(state(...three, ...row(THIRTY))).toBe('tested');
    expect(state(...three, ...row(THIRTY), wash(4, 5))).toBe('tested');
    expect(state(...three, ...row(THIRTY), wash(5, 3.5))).toBe('tested');
    expect(state(...row(THIRTY), wash(5, 5))).toBe('draft');
  });

  it('begins the presses anew with the second lost one, and says on which try they sufficed', () => {
    const failed = recipeStanding([...three, ...row(`x..........x..........`), wash(5, 4)]);
    expect(failed).toMatchObject({ state: 'tested', good: 10, scrap: 0, stretches: 2 });
    const passed = recipeStanding([...three, ...row(`x..........x${THIRTY}`), wash(5, 4)]);
    expect(passed).toMatchObject({ state: 'proven', stretches: 2 });
  });

  it('counts a second neither as good nor as lost', () => {
    expect(recipeStanding(row('s.s'))).toMatchObject({ good: 1, scrap: 0 });
  });

  it('falls to tested with a new lot, and to draft with four in a block of 30', () => {
    const proven = [...three, ...row(THIRTY), wash(5, 4)];
    expect(recipeStanding([...proven, { what: 'newLot' }])).toMatchObject({
      state: 'tested',
      fellBy: 'newLot',
    });
    expect(recipeStanding([...proven, ...row('xxx')]).state).toBe('proven');
    expect(recipeStanding([...proven, ...row('xxxx')])).toMatchObject({ state: 'draft', fellBy: 'alarm' });
  });

  // Blocks of 30 from the first press on: presses 1 to 30 lost 1, 2, 3, 4, 29 and 30, presses 31 to 60 only 31 and 32. The
  // one alarm is that of press 4. Blocks begun anew after it would be presses 5 to 34, with 29 to 32 a second one.
  it('falls by the alarms that are listed, in the same blocks', () => {
    const presses = row(`xxxx${'.'.repeat(24)}xxxx`);
    const entries = presses.flatMap((event) => (event.what === 'pressed' ? [event.entry] : []));
    const unproven = scrapAlarms(entries).filter(({ rule }) => rule.act === 'unproven');
    expect(unproven.map(({ at }) => entries.indexOf(at))).toEqual([3]);
    const [before, after] = [presses.slice(0, 4), presses.slice(4)];
    expect(recipeStanding([...before, ...three, ...after])).toMatchObject({
      state: 'tested',
      fellBy: 'alarm',
    });
    // The next block falls by four of its own.
    expect(recipeStanding([...before, ...three, ...row(`${'.'.repeat(26)}xxxx`)]).state).toBe('draft');
  });

  // 0.92^30 (1 + 30 · 0.08) = 0.08197 · 3.4 = 0.2787 and 0.97^30 (1 + 30 · 0.03) = 0.40101 · 1.9 = 0.7619, by hand: the
  // 30th good one comes before the second lost one.
  it('proves what it says: 8 % passes with 28 %, 3 % with 76 %', () => {
    expect(passChance(0.08)).toBeCloseTo(0.2787, 4);
    expect(passChance(0.03)).toBeCloseTo(0.7619, 4);
  });
});

describe('recipeKey', () => {
  it('is the same for the same setting, whatever was proven of it, and another on another blank or press', () => {
    const key = recipeKey(use);
    expect(recipeKey({ ...use, recipe: { ...clubRecipe, provenPresses: 40 } })).toBe(key);
    expect(recipeKey({ ...use, blankId: 'mug' })).not.toBe(key);
    expect(recipeKey({ ...use, pressId: 'oven' })).not.toBe(key);
    expect(recipeKey({ ...use, recipe: { ...clubRecipe, dwellSeconds: 60 } })).not.toBe(key);
  });
});
