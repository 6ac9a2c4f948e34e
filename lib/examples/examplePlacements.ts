import type { Placement, Recipe } from '@/shared/schemas/job';
import { plannedSteps } from '@/shared/schemas/recipeSteps';
import { kpaFromPsi, mmFromInches } from '@/shared/units';
import { ratesOf } from './exampleRates';

const shirtRecipe: Recipe = {
  temperature: { value: 390, unit: 'F' },
  dwellSeconds: 55,
  pressure: 'lightMedium',
  pressureKpa: kpaFromPsi(40),
  preheatSeconds: 10,
  protectivePaper: 'freshPlain',
  reliefFromRaisedParts: true,
  barrierPaper: true,
  provenPresses: 0,
  steps: plannedSteps,
};

const mugRecipe: Recipe = {
  temperature: { value: 380, unit: 'F' },
  dwellSeconds: 210,
  pressure: 'mediumFirm',
  pressureKpa: null,
  preheatSeconds: null,
  protectivePaper: 'freshPlain',
  reliefFromRaisedParts: false,
  barrierPaper: false,
  provenPresses: 0,
  steps: plannedSteps,
};

type Chosen = Pick<Placement, 'id' | 'name' | 'position' | 'artworkId'> & {
  readonly inches: readonly [number, number];
  readonly scrapShare: number;
  readonly minutes: number;
} & Partial<Pick<Placement, 'dropFromCollarMm' | 'raisedParts' | 'testPresses'>>;

/** A print on the example shirt, pressed on the flat press. */
export function shirtPlacement(day: string, chosen: Chosen): Placement {
  const rate = ratesOf(day);
  return {
    id: chosen.id,
    name: chosen.name,
    position: chosen.position,
    artworkId: chosen.artworkId,
    prints: [print(chosen.inches)],
    fit: 'inside',
    dropFromCollarMm: chosen.dropFromCollarMm ?? mmFromInches(2.5),
    mirror: true,
    pressId: 'flat-press',
    recipe: shirtRecipe,
    raisedParts: chosen.raisedParts ?? 'none',
    scrap: rate(chosen.scrapShare, 'share', 'typical'),
    handMinutes: rate(chosen.minutes, 'min'),
    aloneMinutes: rate(0, 'min'),
    hotMinutes: rate(chosen.minutes, 'min'),
    testPresses: chosen.testPresses ?? 0,
    bleedMm: null,
    safeZoneMm: null,
    rim: { belowMm: null, inside: false },
    replacements: 'alone',
  };
}

/** The strip round the example mug: 1.9 min of hands and a quarter of a 3.5 min dwell are paid. */
export function mugPlacement(day: string, artworkId: string): Placement {
  const rate = ratesOf(day);
  return {
    id: artworkId,
    name: 'Strip round the mug',
    position: 'wrap',
    artworkId,
    prints: [print([8, 3.4])],
    fit: 'inside',
    dropFromCollarMm: null,
    mirror: true,
    pressId: 'mug-press',
    recipe: mugRecipe,
    raisedParts: 'none',
    scrap: rate(0.05, 'share', 'typical'),
    handMinutes: rate(2.775, 'min'),
    aloneMinutes: rate(2.625, 'min'),
    hotMinutes: rate(4, 'min'),
    testPresses: 0,
    bleedMm: null,
    safeZoneMm: null,
    rim: { belowMm: null, inside: false },
    replacements: 'alone',
  };
}

const print = ([width, height]: readonly [number, number]) => ({
  sizes: null,
  widthMm: mmFromInches(width),
  heightMm: mmFromInches(height),
});
