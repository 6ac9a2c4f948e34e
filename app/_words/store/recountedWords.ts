import { spelledNumber } from '@/app/_words/spelledNumber';
import { allCounted, type EntryCounts } from '@/lib/copies/entryCounts';
import { entryWords } from './entryWords';
import { type Forms, onlyHereForms, pick } from './fateWords';

/**
 * What becomes of things beside drafts: entries here that what comes takes back or lets count again, files that were lost
 * here, records that only another version can read.
 */
export interface Recounted {
  readonly noLongerCounting: EntryCounts;
  readonly countingAgain: EntryCounts;
  readonly filesBack: number;
  readonly unread: number;
}

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
      allCounted(noLongerCounting),
      `would no longer count here: ${entryWords(noLongerCounting)}, taken back where the file was made`,
    ] as const,
    [allCounted(countingAgain), `would count here again: ${entryWords(countingAgain)}`] as const,
    [filesBack, `lost ${filesBack === 1 ? 'file' : 'files'} would be here again`] as const,
    [
      unread,
      `${unread === 1 ? 'record' : 'records'} that this version cannot read would be kept unread`,
    ] as const,
  ].filter(([count]) => count > 0);

/** @returns that stock, ink, approvals and papers are here and not in the copy, to be read after their number; null where none are. */
export function onlyHereWords(counts: EntryCounts, isReadWhole: boolean): readonly [number, string] | null {
  const count = allCounted(counts);
  return count === 0
    ? null
    : [count, `${pick(onlyHereForms('the copy', isReadWhole), count)}: ${entryWords(counts)}`];
}

/** @returns what became of it all, once it is done. */
export const recountedDoneWords = ({
  noLongerCounting,
  countingAgain,
  filesBack,
  unread,
}: Recounted): readonly string[] => [
  ...countedWords(noLongerCounting, ['no longer counts here', 'no longer count here']),
  ...countedWords(countingAgain, ['counts here again', 'count here again']),
  ...(filesBack === 0 ? [] : [`${lostFiles(filesBack)} ${filesBack === 1 ? 'is' : 'are'} here again`]),
  ...(unread === 0 ? [] : [`${unreadRecords(unread)} ${unread === 1 ? 'is' : 'are'} kept unread`]),
];

// Helpers

const countedWords = (counts: EntryCounts, forms: Forms): readonly string[] =>
  allCounted(counts) === 0 ? [] : [`${entryWords(counts)} ${pick(forms, allCounted(counts))}`];
