import { listed } from '@/app/_words/listed';
import type { ChangedThing } from '@/lib/pressing/changedThings';
import type { ScoredTrait } from '@/lib/pressing/testScores';

/** What a test is scored by; 1 worst, 5 best. */
export const traitWords: Readonly<Record<ScoredTrait, string>> = {
  density: 'Deep colour',
  sharpness: 'Sharpness',
  scorch: 'No scorch, no shine',
  pressLine: 'No press lines',
  ghost: 'No double image',
  specks: 'No specks',
  evenness: 'Evenness',
};

/** What was changed, within a sentence. */
const changedNames: Readonly<Record<ChangedThing, string>> = {
  temperature: 'temperature',
  dwell: 'time',
  pressure: 'pressure',
  preheat: 'preheat',
  paper: 'protective paper',
  relief: 'pillow',
  lintRoll: 'lint roll',
  tape: 'tape',
  cooling: 'cooling',
  perPress: 'pieces in a press',
  cloth: 'lot of the cloth',
  paperLot: 'lot of the paper',
  inkLot: 'lot of the ink',
  artwork: 'picture',
};

/** @returns what differs from the test before */
export function changedWords(changed: readonly ChangedThing[] | null): string {
  if (changed === null) return 'The first test of this blank in this press.';
  if (changed.length === 0) return 'Nothing changed since the test before.';
  const names = listed(changed.map((thing) => changedNames[thing]));
  return changed.length === 1
    ? `Changed since the test before: ${names}.`
    : `Changed since the test before: ${names}, at once. Nobody can tell which of them did it: change one thing at a time.`;
}

/** @returns whether a test pays for itself */
export const worthWords = (saves: string, cost: string, isWorth: boolean): string =>
  isWorth
    ? `Test: on average it saves ${saves} and costs ${cost}.`
    : `No test needed: on average it would save ${saves} and costs ${cost}.`;

export const unscoredWords = 'Score at least one thing, or name a fault: without either it proves nothing.';

export const testToComeWords =
  'That day is still to come: nothing was pressed on it yet. Set the day of the test.';

export const testPhotoWords = (day: string): string => `Photo of the test of ${day}; opens it`;
