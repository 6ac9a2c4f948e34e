import { describe, expect, it } from 'vitest';
import { recipeLogs } from '@/lib/pressing/recipeLogs';
import { testExpected } from '@/lib/pressing/testExpected';
import { pressTestSchema } from '@/shared/schemas/making/pressLog';
import type { Pressing } from '@/shared/schemas/making/runEvents';
import { clubRecipe, clubStandard, pieceOf, pressedOn, STANDARD } from '@/tests/fixtures/clubPressing';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

const standards = [{ id: STANDARD, body: clubStandard }];

function expectedOf(tests: readonly (readonly string[])[], pieces: readonly Pressing[], currency = 'USD') {
  const pressings = pressedOn(pieces).map((entry) => ({ ...entry, kind: 'pressing' as const }));
  const entries = tests.map((faults, at) => ({
    ...{ id: `test-${at}`, kind: 'pressTest' as const, device: 'testdevice00', count: at + 1, at: at + 1 },
    body: pressTestSchema.parse({
      ...{
        day: TEST_DAY,
        blankId: 'tee',
        pressId: 'flat',
        recipe: clubRecipe,
        scores: { density: 5 },
        faults,
      },
    }),
  }));
  const { recipes } = recipeLogs({ pressings, tests: entries, washes: [], goodsIn: [], standards });
  const [log] = recipes;
  if (log === undefined) throw new Error('no recipe was pressed');
  return testExpected(log, standards, currency);
}

const lost = (pieces: number) =>
  Array.from({ length: pieces }, () => pieceOf('M', 'scrap', { fault: 'pale' }));

describe('what is known before a test press', () => {
  it('draws the share of what went wrong towards one in five, as firmly as five tests', () => {
    // (1 + 1) ÷ (5 + 2 + 1): one of two tests failed, the run was calm.
    expect(expectedOf([[], ['pale']], [pieceOf('M')])).toMatchObject({
      doubt: 0.25,
      tests: 2,
      runs: 1,
      wrong: 1,
    });
    // (1 + 0) ÷ (5 + 3).
    expect(expectedOf([[], [], []], [])).toMatchObject({ doubt: 0.125, wrong: 0 });
  });

  it('counts a run as gone wrong once an alarm said stop, not where it said look', () => {
    // Two lost in ten: look. Three in twenty: stop. (1 + 0) ÷ 6 and (1 + 1) ÷ 6, to a tenth of a percent.
    expect(expectedOf([], lost(2))).toMatchObject({ doubt: 0.167, wrong: 0 });
    expect(expectedOf([], lost(3))).toMatchObject({ doubt: 0.333, wrong: 1 });
  });

  it('knows what a piece costs by the newest run of the recipe, with and without its blank', () => {
    // 411.79 ÷ 37 = 11.13; blanks 37 · 1.068 · 4.83 = 190.86, and 220.93 ÷ 37 = 5.97.
    expect(expectedOf([], [pieceOf('M')]).piece).toEqual({
      ...{ name: 'Club shirts', whole: 11.13, withoutBlank: 5.97 },
    });
    expect(expectedOf([], [pieceOf('M')], 'EUR').piece).toBeNull();
  });
});
