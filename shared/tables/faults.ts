/** What can be wrong with a pressed piece, as the eye sees it; common practice. */
export const pressFaults = [
  'pale',
  'patchy',
  'scorched',
  'blurred',
  'ghost',
  'specks',
  'steam',
  'pressLines',
  'bands',
  'reversed',
  'shade',
  'crooked',
  'other',
] as const;
export type PressFault = (typeof pressFaults)[number];

/** What can be wrong with goods as they come, before anything is pressed; common practice. */
export const goodsFaults = [
  'hole',
  'stain',
  'coating',
  'seam',
  'label',
  'wrongSize',
  'wrongColour',
  'other',
] as const;
export type GoodsFault = (typeof goodsFaults)[number];

/** Why a printed sheet is not pressed; common practice. */
export const sheetFaults = ['bands', 'notMirrored', 'smudge', 'jam', 'colour', 'wrongSide', 'other'] as const;

/** Why a run came out other than its standard; common practice. */
export const gapCauses = [
  'supplierPrice',
  'misprint',
  'pressFault',
  'blankFault',
  'artLate',
  'interruption',
  'extraRevision',
  'practice',
  'newGoods',
  'standardWrong',
  'other',
] as const;
export type GapCause = (typeof gapCauses)[number];
