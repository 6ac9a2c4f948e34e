import { type Blank, textileKinds } from '@/shared/schemas/blank';
import type { Recipe } from '@/shared/schemas/job';
import { plannedSteps } from '@/shared/schemas/recipeSteps';
import type { Workshop } from '@/shared/schemas/workshop';
import { recipeRanges } from '@/shared/tables/recipeRanges';
import { thresholds } from '@/shared/tables/thresholds';
import { celsiusFromFahrenheit } from '@/shared/units';

/** Dials and timers are set in steps of five. */
const STEP = 5;

/**
 * The middle of the starting range of a blank's substrate: a place to begin testing from, not a proven recipe.
 *
 * @param scale °F or °C, in which the maker's press is set
 */
export function startingRecipe(
  { substrate, kind }: Pick<Blank, 'substrate' | 'kind'>,
  scale: Workshop['units']['temperature'],
): Recipe {
  const { fahrenheit, dwellSeconds, pressure } = recipeRanges[substrate];
  const inScale = fahrenheit.map((value) => (scale === 'F' ? value : celsiusFromFahrenheit(value)));
  return {
    temperature: { value: middle(inScale), unit: scale },
    dwellSeconds: middle(dwellSeconds),
    pressure,
    pressureKpa: null,
    preheatSeconds: textileKinds.includes(kind) ? thresholds.recipe.preheat.value : null,
    protectivePaper: 'freshPlain',
    reliefFromRaisedParts: false,
    // Dye gas goes through to the other side of a bag.
    barrierPaper: kind === 'bag' || kind === 'cushion',
    provenPresses: 0,
    steps: plannedSteps,
  };
}

const middle = (range: readonly number[]): number =>
  Math.round((Math.min(...range) + Math.max(...range)) / 2 / STEP) * STEP;
