import type { ResolvedJob } from './checkedJob';

/** @returns how many of a size lie at home, below 0 where more went out than was in; null where nobody counted. */
export function onHandOf(
  { onHand }: Pick<ResolvedJob, 'onHand'>,
  blankId: string,
  size: string,
): number | null {
  // A size may be called anything, `constructor` too.
  if (!Object.hasOwn(onHand, blankId)) return null;
  const sizes = onHand[blankId] ?? {};
  return Object.hasOwn(sizes, size) ? (sizes[size] ?? null) : null;
}
