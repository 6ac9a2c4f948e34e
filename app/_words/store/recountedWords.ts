import { spelledNumber } from '@/app/_words/spelledNumber';

/** Notes here that what comes takes back, or lets count again. */
export interface Recounted {
  readonly noLongerCounting: number;
  readonly countingAgain: number;
}

/** @returns notes that are here, by their number. */
export const notesHere = (count: number): string =>
  `${spelledNumber(count)} ${count === 1 ? 'note' : 'notes'} of what happened here`;

/** @returns what would become of notes that are here, to be read after their number. */
export const recountedWords = ({
  noLongerCounting,
  countingAgain,
}: Recounted): readonly (readonly [number, string])[] =>
  [
    [noLongerCounting, 'of what happened here would no longer count: taken back where the file was made'],
    [countingAgain, 'of what happened here would count again'],
  ].flatMap(([count, words]) =>
    typeof count === 'number' && count > 0
      ? [[count, `${count === 1 ? 'note' : 'notes'} ${words}`] as const]
      : [],
  );

/** @returns what became of notes that are here, once it is done. */
export const recountedDoneWords = ({ noLongerCounting, countingAgain }: Recounted): readonly string[] => [
  ...(noLongerCounting === 0
    ? []
    : [`${notesHere(noLongerCounting)} no longer ${noLongerCounting === 1 ? 'counts' : 'count'}`]),
  ...(countingAgain === 0
    ? []
    : [`${notesHere(countingAgain)} ${countingAgain === 1 ? 'counts' : 'count'} again`]),
];
