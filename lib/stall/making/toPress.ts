import type { StallGoods } from '@/shared/schemas/stallDay';

/** What is brought of some goods and how much of it lies at home, pieces. */
interface Brought extends StallGoods {
  readonly mine: number;
  /** First grade, at home. */
  readonly atHome: number;
}

/** What making asks of the answer to a stall day's plan. */
export type BroughtAnswer =
  | { readonly kind: 'refused' }
  | { readonly kind: 'planned'; readonly goods: readonly (Brought & { readonly design: string })[] };

/** Pieces of some goods that are still to be pressed. */
export interface ToPress extends StallGoods {
  readonly press: number;
}

/**
 * What is short of the numbers of a stall day: what lies finished at home is brought first. After a fair the same says
 * what the next one wants beside the leftovers that came home.
 *
 * @returns a row for all goods that are brought, those with nothing to press too
 */
export const toPress = (goods: readonly Brought[]): readonly ToPress[] =>
  goods.map(({ jobId, lineId, size, mine, atHome }) => ({
    ...{ jobId, lineId, size },
    // More may have gone out than was ever in: that is to be counted, not pressed.
    press: Math.max(0, mine - Math.max(0, atHome)),
  }));

/** Pieces of a plan that are still to be pressed, and whether some of it is pressed already. */
export function pressStanding(goods: readonly (Brought & { readonly finishedBefore: number })[]): {
  readonly pieces: number;
  readonly isBegun: boolean;
} {
  const pieces = toPress(goods).reduce((sum, { press }) => sum + press, 0);
  const made = goods.reduce((sum, one) => sum + Math.max(0, one.mine - one.finishedBefore), 0);
  return { pieces, isBegun: pieces < made };
}
