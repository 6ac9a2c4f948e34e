import { spelledNumber } from '@/app/_words/spelledNumber';

/**
 * What becomes of things beside drafts: notes here that what comes takes back or lets count again, files that were lost
 * here, records that only another version can read.
 */
export interface Recounted {
  readonly noLongerCounting: number;
  readonly countingAgain: number;
  readonly filesBack: number;
  readonly unread: number;
}

/** @returns notes that are here, by their number. */
export const notesHere = (count: number): string =>
  `${spelledNumber(count)} ${count === 1 ? 'note' : 'notes'} of what happened here`;

/** @returns files that are named here and were lost, by their number. */
export const lostFiles = (count: number): string =>
  `${spelledNumber(count)} lost ${count === 1 ? 'file' : 'files'}`;

/** @returns records that cannot be read here, by their number. */
export const unreadRecords = (count: number): string =>
  `${spelledNumber(count)} ${count === 1 ? 'record' : 'records'} that this version cannot read`;

/** @returns what would become of it all, to be read after its number. */
export const recountedWords = ({
  noLongerCounting,
  countingAgain,
  filesBack,
  unread,
}: Recounted): readonly (readonly [number, string])[] =>
  [
    [
      noLongerCounting,
      'note',
      'of what happened here would no longer count: taken back where the file was made',
    ] as const,
    [countingAgain, 'note', 'of what happened here would count again'] as const,
    [filesBack, 'lost file', 'would be here again'] as const,
    [unread, 'record', 'that this version cannot read would be kept unread'] as const,
  ].flatMap(([count, thing, words]) =>
    count > 0 ? [[count, `${thing}${count === 1 ? '' : 's'} ${words}`] as const] : [],
  );

/** @returns what became of it all, once it is done. */
export const recountedDoneWords = ({
  noLongerCounting,
  countingAgain,
  filesBack,
  unread,
}: Recounted): readonly string[] => [
  ...(noLongerCounting === 0
    ? []
    : [`${notesHere(noLongerCounting)} no longer ${noLongerCounting === 1 ? 'counts' : 'count'}`]),
  ...(countingAgain === 0
    ? []
    : [`${notesHere(countingAgain)} ${countingAgain === 1 ? 'counts' : 'count'} again`]),
  ...(filesBack === 0 ? [] : [`${lostFiles(filesBack)} ${filesBack === 1 ? 'is' : 'are'} here again`]),
  ...(unread === 0 ? [] : [`${unreadRecords(unread)} ${unread === 1 ? 'is' : 'are'} kept unread`]),
];
