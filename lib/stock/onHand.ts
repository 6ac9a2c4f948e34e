import type { JobInput } from '@/shared/schemas/request';
import type { Pile } from './foldStock';
import { isReady } from './isReady';

/**
 * What can be pressed at once: first grade, at home. What is in the van or at a shop is not at home.
 *
 * @returns pieces by blank and size; a size of which nothing is known is left out, which is not the same as 0
 */
export function onHand(piles: readonly Pile[]): JobInput['onHand'] {
  const blanks = new Map<string, [string, number][]>();
  for (const pile of piles) {
    if (pile.item.kind !== 'blank' || !isReady(pile)) continue;
    const { blankId, size } = pile.item;
    const sizes = blanks.get(blankId) ?? [];
    sizes.push([size, pile.quantity]);
    blanks.set(blankId, sizes);
  }
  return Object.fromEntries([...blanks].map(([id, sizes]) => [id, Object.fromEntries(sizes)]));
}
