import { type Wording, wording } from '@/app/_words/findings/wording';

/**
 * @param names of accepted orders of which nobody knows all that they take at the bench
 * @returns what that does to the days that are told; null where there are none
 */
export function leftOutWords(names: readonly string[]): Wording | null {
  if (names.length === 0) return null;
  const isOne = names.length === 1;
  return wording(
    `Accepted, but not all of ${isOne ? 'its' : 'their'} work is counted: ${new Intl.ListFormat('en').format(names)}.`,
    `A day told now may need hours that ${isOne ? 'it takes' : 'they take'}. Open ${isOne ? 'it' : 'each'} and look at its jobs: a stop may stand in one, or one may be missing.`,
  );
}
