import type { PressedSize } from '@/lib/pressing/foldPressings';

/** @returns spares of a size in a word or two */
export function sparesWords({
  spares,
  sparesLeft,
  short,
}: Pick<PressedSize, 'spares' | 'sparesLeft' | 'short'>): string {
  if (short > 0) return `${short} short`;
  if (sparesLeft <= 0) return 'none';
  return sparesLeft === spares ? `${spares}` : `${sparesLeft} of ${spares}`;
}
