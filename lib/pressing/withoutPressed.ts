import type { Finding } from '@/shared/finding';
import type { Entry } from '@/shared/schemas/happened';
import type { Job } from '@/shared/schemas/job';
import type { Pressing } from '@/shared/schemas/making/runEvents';
import { recipeKey } from './recipeKey';
import { recipeUses, type StandardOfRecipes } from './recipeUses';

/**
 * @param pressings in force
 * @returns the keys of recipes that any run pressed, each on its blank in its press, whatever came of it
 */
export function recipesPressed(
  pressings: readonly Pick<Entry<'pressing', Pressing>, 'body'>[],
  standards: readonly StandardOfRecipes[],
): ReadonlySet<string> {
  const recipeOf = recipeUses(standards);
  // One use stands for all pieces of a placement: its key is written once.
  const uses = new Set(pressings.flatMap(({ body }) => recipeOf(body) ?? []));
  return new Set([...uses].map(recipeKey));
}

/**
 * Findings of a job without REC-12 that says *never* of a blank, where the log has presses of every recipe on it of which
 * the job says so: that count is kept by hand, and the log knows better.
 */
export function withoutPressed(
  findings: readonly Finding[],
  { lines }: Pick<Job, 'lines'>,
  pressed: ReadonlySet<string>,
): readonly Finding[] {
  return findings.filter((finding) => {
    if (finding.id !== 'REC-12' || finding.variant !== 'never') return true;
    const blankId = lines.find(({ id }) => id === finding.where.lineId)?.blankId;
    const unproven = lines
      .filter((line) => line.blankId === blankId)
      .flatMap(({ placements }) => placements.filter(({ recipe }) => recipe.provenPresses === 0));
    return (
      blankId === undefined ||
      unproven.some(({ recipe, pressId }) => !pressed.has(recipeKey({ recipe, blankId, pressId })))
    );
  });
}
