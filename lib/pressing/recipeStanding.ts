import { atLeast } from '@/lib/statistics/enoughGood';
import type { PressTest, WashCheck } from '@/shared/schemas/making/pressLog';
import type { PressedEntry } from './pressedEntry';
import { scrapAlarms } from './scrapAlarms';
import { hasPassed } from './testScores';

type RecipeState = 'draft' | 'tested' | 'proven';

/** Tests that are to pass one after the other. */
export const TESTS_NEEDED = 3;
/** Good presses that prove a recipe, with at most so many spoiled before the last of them. */
export const GOOD_NEEDED = 30;
export const SCRAP_ALLOWED = 1;
/** A wash check that counts, and the grade it is to keep. */
export const WASHES_NEEDED = 5;
export const GRADE_NEEDED = 4;

/** What happened to a recipe on a blank in a press, in order. */
export type RecipeEvent =
  | { readonly what: 'pressed'; readonly entry: PressedEntry }
  | { readonly what: 'tested'; readonly test: PressTest }
  | { readonly what: 'washed'; readonly check: WashCheck }
  /** Cloth, paper or ink of another lot. */
  | { readonly what: 'newLot' };

/** How far a recipe has come, and what there is of what it lacks. */
export interface RecipeStanding {
  readonly state: RecipeState;
  /** Passed one after the other, at most as many as are needed. */
  readonly tests: number;
  /** Good presses and spoiled ones of the stretch that counts. */
  readonly good: number;
  readonly scrap: number;
  /** Whether the presses suffice; the wash check may still be missing. */
  readonly isPressed: boolean;
  /** Stretches that were begun, the failed ones among them: who tries often passes more easily. */
  readonly stretches: number;
  /** Of the newest check of enough washes; null where there is none since. */
  readonly grade: number | null;
  /** What took it back last; null where nothing did. */
  readonly fellBy: 'newLot' | 'alarm' | null;
}

/**
 * Draft until three tests in a row passed; then tested. Proven once 30 presses came good with at most one spoiled, and
 * five washes left grade 4. A second spoiled one before the 30th good one begins the stretch anew. A new lot takes
 * presses and washes back, and an alarm of four in 30 all of it; common practice, the stretches the product's own choice.
 * Its blocks are those of the alarms that are listed: a fall begins none anew.
 */
export function recipeStanding(events: readonly RecipeEvent[]): RecipeStanding {
  const pressed = events.flatMap((event) => (event.what === 'pressed' ? [event.entry] : []));
  const falls = new Set(
    scrapAlarms(pressed)
      .filter(({ rule }) => rule.act === 'unproven')
      .map(({ at }) => at),
  );
  let standing = FRESH;
  for (const event of events) {
    switch (event.what) {
      case 'pressed':
        standing = falls.has(event.entry) ? { ...FRESH, fellBy: 'alarm' } : afterPress(standing, event.entry);
        break;
      case 'tested':
        standing = {
          ...standing,
          tests:
            standing.tests >= TESTS_NEEDED ? standing.tests : hasPassed(event.test) ? standing.tests + 1 : 0,
        };
        break;
      case 'washed':
        if (event.check.cycles >= WASHES_NEEDED) standing = { ...standing, grade: event.check.grade };
        break;
      case 'newLot':
        if (standing.good + standing.scrap > 0 || standing.grade !== null)
          standing = { ...FRESH, tests: standing.tests, fellBy: 'newLot' };
        break;
      default:
        event satisfies never;
    }
  }
  return { ...standing, state: stateOf(standing) };
}

/**
 * What *proven* proves: a recipe that truly spoils such a share comes through one stretch with this chance, that is, at
 * most one of 31 presses is spoiled.
 */
export const passChance = (scrap: number): number =>
  1 - atLeast(GOOD_NEEDED + SCRAP_ALLOWED, SCRAP_ALLOWED + 1, scrap);

// Helpers

const FRESH: RecipeStanding = {
  ...{ state: 'draft', tests: 0, good: 0, scrap: 0, isPressed: false },
  ...{ stretches: 0, grade: null, fellBy: null },
};

function afterPress(standing: RecipeStanding, { body }: PressedEntry): RecipeStanding {
  if (standing.isPressed) return standing;
  const stretches = Math.max(1, standing.stretches);
  const good = standing.good + (body.result === 'good' ? 1 : 0);
  const scrap = standing.scrap + (body.result === 'scrap' ? 1 : 0);
  if (scrap > SCRAP_ALLOWED) return { ...standing, good: 0, scrap: 0, stretches: stretches + 1 };
  return { ...standing, good, scrap, stretches, isPressed: good >= GOOD_NEEDED };
}

function stateOf({ tests, isPressed, grade }: RecipeStanding): RecipeState {
  if (tests < TESTS_NEEDED) return 'draft';
  return isPressed && grade !== null && grade >= GRADE_NEEDED ? 'proven' : 'tested';
}
