import type { Blank } from '@/shared/schemas/blank';

/**
 * Colours that blanks are sold in, by CIE L*a*b*: typical values from memory, to judge cloth by eye against until
 * it is measured. White and pale ones let the print show; the last two are there to be stopped.
 */
export const swatches: readonly Blank['colour'][] = [
  { name: 'White', L: 94, a: 0, b: 2 },
  { name: 'Natural', L: 88, a: 1, b: 9 },
  { name: 'Ash', L: 84, a: 0, b: 0 },
  { name: 'Pale pink', L: 86, a: 11, b: 3 },
  { name: 'Pale blue', L: 86, a: -4, b: -9 },
  { name: 'Pale green', L: 88, a: -10, b: 9 },
  { name: 'Pale yellow', L: 91, a: -3, b: 20 },
  { name: 'Heather grey', L: 72, a: 0, b: 0 },
  { name: 'Red', L: 42, a: 58, b: 34 },
  { name: 'Black', L: 15, a: 0, b: 0 },
];
