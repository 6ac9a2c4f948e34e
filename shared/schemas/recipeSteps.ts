import { z } from './z';

const planned = () => z.boolean().nullable().default(null);

/** Steps of a recipe beside heat, time and pressure. Null is not yet said. */
export const recipeStepsSchema = z.strictObject({
  lintRoll: planned(),
  /** Heat-resistant tape on all four edges of the transfer. */
  tapeEdges: planned(),
  /** Left lying before the transfer is peeled off; 0 for not at all. */
  coolSeconds: z.number().min(0).max(600).nullable().default(null),
  /** Hard goods: cooled quickly and all round, by a fan. */
  evenCooling: planned(),
  /** Pieces side by side under the platen in one press. */
  piecesPerPress: z.int().min(1).max(500).default(1),
});

type RecipeSteps = z.infer<typeof recipeStepsSchema>;

/** Of a recipe whose steps nobody has gone through. */
export const untoldSteps: RecipeSteps = {
  lintRoll: null,
  tapeEdges: null,
  coolSeconds: null,
  evenCooling: null,
  piecesPerPress: 1,
};

/** All steps taken, as a run sheet plans them: cooling 10 to 15 s is common practice. */
export const plannedSteps: RecipeSteps = {
  lintRoll: true,
  tapeEdges: true,
  coolSeconds: 12,
  evenCooling: true,
  piecesPerPress: 1,
};
