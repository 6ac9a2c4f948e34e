import type { Formatter } from '@/app/_words/formatter';
import {
  GOOD_NEEDED,
  GRADE_NEEDED,
  passChance,
  type RecipeStanding,
  SCRAP_ALLOWED,
  TESTS_NEEDED,
  WASHES_NEEDED,
} from '@/lib/pressing/recipeStanding';
import { ordinal } from './ordinal';

export const pressLogWords = {
  title: 'Press log',
  line: 'What each recipe has proven, on its blank, in its press.',
  nothing:
    'Nothing was pressed or tested yet. Note a test press here, or press a run: what is tapped there stands here by itself.',
  noRecipe: 'No job prints this blank yet. Set a recipe for it in a job first.',
  noPress: 'Name a press in the workshop and a blank first: a test belongs to both.',
} as const;

export const stateWords: Readonly<Record<RecipeStanding['state'], string>> = {
  draft: 'draft',
  tested: 'tested',
  proven: 'proven',
};

/** @returns what the word proves, and what it does not */
export function provesWords({ state, stretches }: RecipeStanding, formatter: Formatter): string {
  if (state === 'draft') return 'Nothing is shown yet.';
  if (state === 'tested')
    return `${TESTS_NEEDED} tests in a row were good: it can come out right. How often it spoils a piece is not known.`;
  const tried = stretches > 1 ? ` It passed on the ${ordinal(stretches)} try, which makes it easier.` : '';
  return `A recipe that truly spoils ${formatter.share(0.08)} passes with a chance of ${whole(passChance(0.08), formatter)}, one of ${formatter.share(0.03)} with ${whole(passChance(0.03), formatter)}.${tried}`;
}

/** @returns what is still missing, a sentence each */
export function missingWords({
  tests,
  good,
  scrap,
  isPressed,
  stretches,
  grade,
  fellBy,
}: RecipeStanding): readonly string[] {
  return [
    fellBy === 'newLot' ? 'A new lot came: presses and washes begin anew.' : null,
    fellBy === 'alarm' ? 'Too many were lost in a block of 30: all begins anew.' : null,
    tests < TESTS_NEEDED ? `${tests} of ${TESTS_NEEDED} tests in a row with all scores 4 or more.` : null,
    isPressed
      ? null
      : `${good} of ${GOOD_NEEDED} good presses with at most ${SCRAP_ALLOWED} lost; ${scrap} lost ${stretches > 1 ? `since ${SCRAP_ALLOWED + 1} lost ended the last stretch` : 'so far'}.`,
    grade === null ? `A check after ${WASHES_NEEDED} washes.` : null,
    grade !== null && grade < GRADE_NEEDED
      ? `After ${WASHES_NEEDED} washes it kept grade ${grade}; ${GRADE_NEEDED} is needed.`
      : null,
  ].filter((line) => line !== null);
}

export const withoutRecipeWords = (pieces: number): string =>
  `${pieces} pieces were pressed by no standard that is on this device: kept, and counted for no recipe.`;

// Helpers

const whole = (share: number, formatter: Formatter): string => `${formatter.number(share * 100, 0)} %`;
