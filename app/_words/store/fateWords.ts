import type { ArrivalFate } from '@/lib/copies/arrivalGroups';
import type { CopyScope } from '@/lib/copies/copy';

export type Forms = readonly [one: string, many: string];

/** What something arrives in, as sentences name it: a copy of everything, or the file of one draft. */
export type Arriving = 'the copy' | 'the file';

/** @returns what a copy or a carried file is called. */
export const arrivingIn = (of: CopyScope): Arriving => (of === 'everything' ? 'the copy' : 'the file');

/** What becomes of drafts, after their number; of one and of several. */
export const fateWords = (it: Arriving): Readonly<Record<ArrivalFate, Forms>> => ({
  comesBack: ['comes back', 'come back'],
  new: ['is new here and comes in', 'are new here and come in'],
  updated: [`is newer in ${it} and is taken`, `are newer in ${it} and are taken`],
  merged: [
    'changed in both, in different places: both changes are kept',
    'changed in both, in different places: both changes are kept',
  ],
  beside: [
    `changed in both: the one of ${it} comes beside yours`,
    `changed in both: those of ${it} come beside yours`,
  ],
  replaced: [`makes way for the one of ${it}`, `make way for those of ${it}`],
  setBack: [`goes back to what ${it} has`, `go back to what ${it} has`],
  removed: [`goes, as it did where ${it} was made`, `go, as they did where ${it} was made`],
  newerHere: ['is newer here and stays', 'are newer here and stay'],
  onlyHere: ['is only here and stays', 'are only here and stay'],
  keptMine: ['stays as it is here', 'stay as they are here'],
  removedThere: [
    `was removed where ${it} was made, and stays here`,
    `were removed where ${it} was made, and stay here`,
  ],
  doubled: ['came in beside yours before, and both stay', 'came in beside yours before, and all stay'],
  leftOut: ['stays out', 'stay out'],
  same: ['is the same', 'are the same'],
});

/** What is here and was not met in a copy: of one that was not read whole nobody knows whether it held them. */
export const onlyHereForms = (it: Arriving, isReadWhole: boolean): Forms =>
  isReadWhole
    ? fateWords(it).onlyHere
    : [`was not read in ${it}, and stays as it is here`, `were not read in ${it}, and stay as they are here`];

/** The same as a promise, in the headline. */
export const wouldWords = (it: Arriving): Readonly<Partial<Record<ArrivalFate, string>>> => ({
  comesBack: 'would come back',
  new: 'would come in',
  updated: 'would be brought up to date',
  merged: 'would be put together from both',
  beside: 'would come in beside yours',
  replaced: 'would make way here',
  setBack: `would go back to what ${it} has`,
  removed: 'would go here',
});

/** @returns the form for so many. */
export const pick = ([one, many]: Forms, count: number): string => (count === 1 ? one : many);
