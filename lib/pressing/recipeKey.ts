import { canonicalText } from '@/lib/stored/canonicalText';
import type { Recipe } from '@/shared/schemas/job';

/** A recipe on a blank in a press: what is tested and proven is all three together. */
export interface RecipeUse {
  readonly recipe: Recipe;
  readonly blankId: string;
  readonly pressId: string;
}

/** @returns the same text for the same recipe as it is set, on the same blank, in the same press; what was proven of it is no part of it */
export function recipeKey({ recipe, blankId, pressId }: RecipeUse): string {
  const { provenPresses: _, ...set } = recipe;
  return canonicalText({ recipe: set, blankId, pressId });
}
