import { fromMinor, toMinor } from '@/shared/money';
import type { StandardWork } from '@/shared/schemas/making/runPapers';
import { type RecipeUse, recipeKey } from './recipeKey';
import type { RecipeLog } from './recipeLogs';
import type { StandardOfRecipes } from './recipeUses';
import { hasPassed } from './testScores';

/** What is asked of a test press, as far as the log and what a run was reckoned with tell it. */
export interface TestExpected {
  /** Chance that the recipe is wrong, 0 to 1. */
  readonly doubt: number;
  /** Tests and runs that it rests on, and how many of them went wrong. */
  readonly tests: number;
  readonly runs: number;
  readonly wrong: number;
  /** One piece by the newest run of the recipe; null where there is none in this currency. */
  readonly piece: {
    readonly name: string;
    /** All that making one costs, and the same without its blank. Currency units, in whole minor ones. */
    readonly whole: number;
    readonly withoutBlank: number;
  } | null;
}

/** While nothing is known one recipe in five is taken to be wrong, as firmly as five tests would say; the product's own choice. */
export const FIRST_DOUBT = 0.2;
const FIRST_TRIALS = 5;

/**
 * A test that did not pass, and a run in which an alarm said stop, went wrong; the share of those is drawn towards what is
 * assumed.
 *
 * @param standards in the store's one order
 */
export function testExpected(
  log: Pick<RecipeLog, keyof RecipeUse | 'tests' | 'runs' | 'alarms'>,
  standards: readonly StandardOfRecipes[],
  currency: string,
): TestExpected {
  const stopped = new Set(log.alarms.flatMap(({ rule, at }) => (rule.act === 'look' ? [] : [at.body.runId])));
  const wrong = log.tests.filter(({ body }) => !hasPassed(body)).length + stopped.size;
  const [tests, runs] = [log.tests.length, log.runs.length];
  const doubt = (FIRST_DOUBT * FIRST_TRIALS + wrong) / (FIRST_TRIALS + tests + runs);
  return {
    ...{ doubt: Math.round(doubt * 1000) / 1000, tests, runs, wrong },
    piece: pieceOf(log, standards, currency),
  };
}

// Helpers

function pieceOf(
  use: RecipeUse,
  standards: readonly StandardOfRecipes[],
  currency: string,
): TestExpected['piece'] {
  const key = recipeKey(use);
  const isOf = ({ lines }: StandardWork) =>
    lines.some(({ blankId, placements }) =>
      placements.some(({ recipe, pressId }) => recipeKey({ recipe, pressId, blankId }) === key),
    );
  const work = standards
    .filter(({ body }) => body.currency === currency)
    .flatMap(({ body }) => body.works)
    .findLast(isOf);
  if (work === undefined) return null;
  const sizes = work.lines.flatMap((line) => line.sizes);
  const pieces = sizes.reduce((sum, { wanted }) => sum + wanted, 0);
  if (pieces === 0) return null;
  const blanks = sizes.reduce((sum, { wanted, blanksEach, price }) => sum + wanted * blanksEach * price, 0);
  const whole = (amount: number) => fromMinor(toMinor(Math.max(0, amount), currency), currency);
  return {
    name: work.name,
    whole: whole(work.fullCost / pieces),
    withoutBlank: whole((work.fullCost - blanks) / pieces),
  };
}
