import type { Formatter } from '@/app/_words/formatter';
import { memoryOf, transferSize } from '@/lib/exports/transferSize';
import type { Picture } from '@/shared/schemas/picture';

/** Names of files are cut to this, so that what tells two apart stays within what file systems take. */
const MOST_NAME_LETTERS = 60;
/** More counts than this say nothing in the name of a file. */
const MOST_COUNTS = 3;
/** Above this a phone may end the page: common practice leaves it a few hundred megabytes. */
const MOST_PHONE_BYTES = 250_000_000;

/** @returns the name of the file that has a page for every sheet: “Club shirts, all 47 sheets.pdf” */
export const everySheetName = (jobName: string, pages: number): string =>
  `${short(jobName)}, ${pages === 1 ? '1 sheet' : `all ${pages} sheets`}.pdf`;

/** @returns the name of the file that has one page of each: “Club shirts, one of each, print 37 x + 10 x.pdf” */
export const oneOfEachName = (jobName: string, counts: readonly number[]): string =>
  counts.length > MOST_COUNTS
    ? `${short(jobName)}, one of each of ${counts.length}.pdf`
    : `${short(jobName)}, one of each, print ${counts.map((count) => `${count} x`).join(' + ')}.pdf`;

/** @returns the name of the page that goes with either: “Club shirts – cover, plain paper.pdf” */
export const coverName = (jobName: string): string => `${short(jobName)} – cover, plain paper.pdf`;

/** Without signs that some systems do not take, and cut where it is very long. */
function short(name: string): string {
  const plain = name
    .replace(/[\\/:*?"<>|\p{Cc}]+/gu, ' ')
    .replace(/\s+/g, ' ')
    .trim();
  const letters = [...plain];
  const cut =
    letters.length > MOST_NAME_LETTERS ? `${letters.slice(0, MOST_NAME_LETTERS).join('').trim()}…` : plain;
  // A name that begins with a point is hidden on some systems.
  return cut.replace(/^\.+/, '') || 'Sheets';
}

/** How often each page is printed where the file holds one of each. */
export function copiesWords(counts: readonly number[], formatter: Formatter): string {
  const each = counts.map((count, at) =>
    at === 0
      ? `${formatter.count(count, 'copy', 'copies')} of page 1`
      : `${formatter.number(count, 0)} of page ${at + 1}`,
  );
  return `Of the file with one of each, print ${listOf(each)}.`;
}

/** A picture of the file to print. */
interface SizedPicture {
  readonly name: string;
  readonly picture: Pick<Picture, 'format' | 'bytes' | 'width' | 'height'>;
}

/**
 * How large the file will be, and what to do where that is much: about the picture that takes most of the memory.
 *
 * @param kept each picture once
 */
export function sizeWords(kept: readonly SizedPicture[], formatter: Formatter): string {
  const size = transferSize(kept.map(({ picture }) => picture));
  const [costliest] = kept.toSorted((one, other) => memoryOf(other.picture) - memoryOf(one.picture));
  if (costliest === undefined) return '';
  const about = `About ${megabytes(size.file, formatter)}.`;
  return size.memory <= MOST_PHONE_BYTES
    ? about
    : `${about} Writing it takes some ${megabytes(size.memory, formatter)} of memory, more than a phone may have: write it on a computer, or ${smallerWords(costliest)}.`;
}

/** A photo is packed well already: only fewer pixels make it smaller. */
const smallerWords = ({ name, picture }: SizedPicture): string =>
  picture.format === 'jpeg'
    ? `save ${name} at the size it is printed (300 pixels an inch are plenty) and take it in again`
    : `take in ${name} as JPEG, about a tenth of the size`;

const megabytes = (bytes: number, formatter: Formatter): string =>
  `${formatter.number(Math.max(0.1, bytes / 1e6), bytes < 10e6 ? 1 : 0)} MB`;

interface LongPages {
  readonly printerName: string;
  readonly longestPageMm: number;
  /** Of the longest page. */
  readonly pageMm: number;
  readonly isRoll: boolean;
}

/** What is wrong where a page is longer than the printer takes. */
export const tooLongWords = (
  { printerName, longestPageMm, pageMm, isRoll }: LongPages,
  formatter: Formatter,
): string =>
  `A page is ${formatter.length(pageMm)} long and ${printerName} prints ${formatter.length(longestPageMm)} at most: the rest would be cut off or all of it made smaller. ${
    isRoll
      ? 'Have shorter pages: make the job in parts, or choose cut sheets.'
      : 'Choose a smaller sheet, or another printer.'
  }`;

/** What is said of a file that is written. */
export interface WrittenFacts {
  readonly name: string;
  readonly bytes: number;
  /** Names of pictures by what became of them. */
  readonly lost: readonly string[];
  readonly otherSpace: readonly string[];
  readonly unreadable: readonly string[];
  readonly converted: readonly string[];
}

/** The name and size of what is written, then what is not as the maker may think. */
export function writtenWords(facts: WrittenFacts, formatter: Formatter): string {
  const { lost, otherSpace, unreadable, converted } = facts;
  const of = (names: readonly string[], words: string) =>
    names.length === 0 ? [] : [`${listOf(names)}: ${words}`];
  return [
    `“${facts.name}” is written, ${megabytes(facts.bytes, formatter)}.`,
    ...of(lost, 'the picture could not be read, so its place is empty. Take it in again.'),
    ...of(
      otherSpace,
      'the colour profile is of another kind than the picture. It is taken as sRGB, and colours may differ.',
    ),
    ...of(unreadable, 'the colour profile cannot be read. It is taken as sRGB, and colours may differ.'),
    ...of(converted, 'the colours were turned into sRGB, which holds fewer than some profiles do.'),
  ].join(' ');
}

const listOf = (names: readonly string[]): string =>
  names.length === 1 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
