/**
 * Pieces that were finished before and not for the day come along first, and are sold first.
 *
 * @param brought refills too
 * @param finishedBefore pieces; more may lie at home than come along
 * @returns how many of those brought are from home
 */
export const broughtFromHome = (brought: number, finishedBefore: number): number =>
  Math.min(brought, finishedBefore);
