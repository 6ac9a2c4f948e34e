import { type Wording, wording } from '@/app/_words/findings/wording';
import type { readCsvBytes } from '@/lib/names/readCsvBytes';

type Why = Extract<ReturnType<typeof readCsvBytes>, { state: 'refused' }>['why'];

const words: Readonly<Record<Why, readonly [string, string]>> = {
  empty: ['is empty.', 'Look whether it was saved whole, and choose it again.'],
  tooLarge: ['is too large for a list of names.', 'Leave only the rows of this order in it.'],
  workbook: [
    'is a workbook, which is not read here.',
    'Save it as CSV (UTF-8), or copy its cells and paste them.',
  ],
  encoding: [
    'does not tell how its letters are written.',
    'Names would come out wrong. Save it as CSV UTF-8, or copy its cells and paste them.',
  ],
};

/** @returns why a file of names is not read, and what to do */
export const csvProblemWords = (name: string, why: Why): Wording =>
  wording(`“${name}” ${words[why][0]}`, words[why][1]);
