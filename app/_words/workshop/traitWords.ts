import type { Traits } from '@/shared/schemas/blankTraits';

/** Finish of a cloth. */
export const finishWords: Readonly<Record<Traits['finish'], string>> = {
  plain: 'Plain',
  performance: 'Performance, moisture-wicking',
  heather: 'Heather, mélange',
  unknown: 'Not known',
};

/** Layers of a bag or cushion under the print. */
export const layerWords: Readonly<Record<Traits['layers'], string>> = {
  one: 'One',
  two: 'Another one behind the print',
  unknown: 'Not known',
};

/** The coated face of a flat piece. */
export const faceWords: Readonly<Record<Traits['coatedFace'], string>> = {
  marked: 'One, and it is marked',
  both: 'Both',
  unknown: 'Not known',
};

/** How hard the coating of a cup is. */
export const hardnessWords: Readonly<Record<Traits['coatingHardness'], string>> = {
  soft: 'Soft',
  hard: 'Hard',
  unknown: 'Not known',
};
