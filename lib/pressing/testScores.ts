import type { PressTest } from '@/shared/schemas/making/pressLog';

/** What a test press is scored by, 1 worst to 5 best. */
export const scoredTraits = [
  'density',
  'sharpness',
  'scorch',
  'pressLine',
  'ghost',
  'specks',
  'evenness',
] as const satisfies readonly (keyof PressTest['scores'])[];
export type ScoredTrait = (typeof scoredTraits)[number];

/** Of a test that shows the recipe to be good. */
const GOOD_SCORE = 4;

/** @returns the lowest score that was given; null where none was */
function lowestScore({ scores }: Pick<PressTest, 'scores'>): number | null {
  const given = scoredTraits.flatMap((trait) => scores[trait] ?? []);
  return given.length === 0 ? null : Math.min(...given);
}

/** A test passes where every score that was given is good, at least one was given, and no fault was named. */
export const hasPassed = (test: Pick<PressTest, 'scores' | 'faults'>): boolean =>
  test.faults.length === 0 && (lowestScore(test) ?? 0) >= GOOD_SCORE;
