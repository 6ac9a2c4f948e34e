import { heatWords } from '@/app/_words/docket/jobSheetWords';
import type { Formatter } from '@/app/_words/formatter';
import { paperWords, pressureWords } from '@/app/_words/materialWords';
import type { Recipe } from '@/shared/schemas/job';

/** @returns what is set at the press: “390 °F · 55 s · 40 psi” */
export const recipeAtPress = (recipe: Recipe, formatter: Formatter): string =>
  `${heatWords(recipe, formatter)} · ${recipe.pressureKpa === null ? pressureWords(recipe.pressure) : formatter.pressure(recipe.pressureKpa)}`;

/** @returns what else belongs to a recipe, in short sentences */
export function recipeMore({
  protectivePaper,
  barrierPaper,
  preheatSeconds,
  steps,
  ...more
}: Recipe): readonly string[] {
  return [
    preheatSeconds === null ? null : `Heat the blank ${preheatSeconds} s first.`,
    steps.lintRoll === true ? 'Lint roll.' : null,
    steps.tapeEdges === true ? 'Tape all four edges.' : null,
    `Coated side down, ${paperWords(protectivePaper)} over it.`,
    barrierPaper ? 'Fresh paper inside and under.' : null,
    more.reliefFromRaisedParts ? 'Pillow, or raised parts off the platen.' : null,
    steps.coolSeconds === null ? null : `Cool ${steps.coolSeconds} s in place.`,
  ].filter((part) => part !== null);
}
