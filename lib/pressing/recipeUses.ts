import type { Paper } from '@/shared/schemas/happened';
import type { Pressing } from '@/shared/schemas/making/runEvents';
import type { RunStandard } from '@/shared/schemas/making/runPapers';
import type { RecipeUse } from './recipeKey';

/** Standards say by which recipe a piece was pressed; withdrawn ones too. */
export type StandardOfRecipes = Pick<Paper<'runStandard', RunStandard>, 'id' | 'body'>;

/** @returns finds the recipe, blank and press of a piece; undefined where its standard is not here */
export function recipeUses(
  standards: readonly StandardOfRecipes[],
): (pressing: Pick<Pressing, 'standardId' | 'jobId' | 'lineId' | 'placementId'>) => RecipeUse | undefined {
  const uses = new Map(
    standards.flatMap(({ id, body }) =>
      body.works.flatMap(({ jobId, lines }) =>
        lines.flatMap(({ lineId, blankId, placements }) =>
          placements.map(({ placementId, recipe, pressId }): [string, RecipeUse] => [
            keyOf({ standardId: id, jobId, lineId, placementId }),
            { recipe, blankId, pressId },
          ]),
        ),
      ),
    ),
  );
  return (pressing) => uses.get(keyOf(pressing));
}

// Helpers

const keyOf = ({
  standardId,
  jobId,
  lineId,
  placementId,
}: Pick<Pressing, 'standardId' | 'jobId' | 'lineId' | 'placementId'>) =>
  `${standardId} ${jobId} ${lineId} ${placementId}`;
