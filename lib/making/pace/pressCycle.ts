import type { Recipe } from '@/shared/schemas/job';
import { pressCycleSeconds as usual } from '@/shared/tables/pressCycle';

/** One press from the piece laid on to the piece taken off, seconds. */
interface PressCycle {
  readonly seconds: number;
  /** Of them those in which the hands are busy; in the rest the press heats or the print cools in place. */
  readonly handSeconds: number;
}

/** @param isPreTaped transfers lie taped, which was done at the bench */
export function pressCycle(recipe: Recipe, isPreTaped: boolean): PressCycle {
  const handSeconds =
    usual.loadAndLint + (isPreTaped ? usual.alignTaped : usual.alignAndTape) + usual.peelAndUnload;
  const heated =
    (recipe.preheatSeconds ?? usual.preheat) +
    recipe.dwellSeconds +
    (recipe.steps.coolSeconds ?? usual.coolInPlace);
  return { seconds: handSeconds + heated, handSeconds };
}

/** @returns what is left of a press at its own minutes when transfers are taped before, as a share */
export const preTapedShare = (recipe: Recipe): number =>
  pressCycle(recipe, true).seconds / pressCycle(recipe, false).seconds;
