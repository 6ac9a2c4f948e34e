import type { Pressing } from '@/shared/schemas/making/runEvents';
import { type RecipeUse, recipeKey } from './recipeKey';
import { recipeUses, type StandardOfRecipes } from './recipeUses';

/**
 * Pieces that any run pressed with the same recipe on the same blank in the same press.
 *
 * @param pressings in force
 */
export function pressedByRecipe<Entry extends { readonly body: Pressing }>(
  use: RecipeUse,
  pressings: readonly Entry[],
  standards: readonly StandardOfRecipes[],
): readonly Entry[] {
  const key = recipeKey(use);
  const recipeOf = recipeUses(standards);
  // One use stands for all pieces of a placement: its key is written once.
  const isOwn = new Map<RecipeUse, boolean>();
  return pressings.filter(({ body }) => {
    const found = recipeOf(body);
    if (found === undefined) return false;
    const known = isOwn.get(found) ?? recipeKey(found) === key;
    isOwn.set(found, known);
    return known;
  });
}
