import { learnedBlankFaults, learnedSheetRejects } from './learnedFaults';
import type { LearnedFrom } from './learnedFrom';
import { learnedInk } from './learnedInk';
import { learnedMinutes } from './learnedMinutes';
import { learnedPressMinutes } from './learnedPressMinutes';
import { learnedPrices } from './learnedPrices';
import { learnedScrap } from './learnedScrap';
import { learnedSizes } from './learnedSizes';
import type { Lesson } from './lesson';

/**
 * What runs and deliveries taught, newest figures of all of them. Prices paid are taken over whole, shares and minutes
 * move by what was seen and by no rule of how often; nothing is changed until the maker takes it over.
 */
export const foldLearned = (from: LearnedFrom): readonly Lesson[] => [
  ...learnedPrices(from),
  ...learnedScrap(from),
  ...learnedBlankFaults(from),
  ...learnedSheetRejects(from),
  ...learnedPressMinutes(from),
  ...learnedMinutes(from),
  ...learnedInk(from),
  ...learnedSizes(from),
];
