import { type Wording, wording } from '@/app/_words/findings/wording';
import type { Formatter } from '@/app/_words/formatter';
import type { NamesPreview, PreviewRow } from '@/lib/names/namePreview';
import type { SizeCount } from '@/lib/names/readSize';
import { understoodWords } from './nameFaultWords';

type Counting = Pick<Formatter, 'number' | 'count'>;

/** Under a name that stands twice in an order. */
export const TWICE = 'The same name stands twice. Two people may share it; else remove one.';

export const sizeNotMadeWords = (size: string): string => `The blank has no size “${size}”.`;

/** Names of people are personal data; said once, where they are taken in. */
export const PERSONAL =
  'Names are kept on this device. Keep them only as long as they are needed, those of children least of all.';

/** Where the browser does not keep for the tab what is being taken in. */
export const NOT_REMEMBERED =
  'The browser keeps no more for this tab: a reload would lose what stands here. Take the names in before.';

/** Of an order whose customer was erased nothing is kept beside the records. */
export const NOT_REMEMBERED_ERASED =
  'The customer was erased: a reload would lose what stands here. Take the names in before.';

/** @returns how much was read, and how much of it is to be looked at */
export function readWords(
  { rows, pieces }: Pick<NamesPreview, 'rows' | 'pieces'>,
  faulty: number,
  formatter: Counting,
): { readonly key: string; readonly after: string } {
  const more = pieces === rows.length ? '' : `, ${formatter.count(pieces, 'piece')}`;
  return {
    key: `${formatter.count(rows.length, 'row')} read`,
    after: `${more}, ${faulty === 0 ? 'nothing wrong with any' : `${formatter.number(faulty, 0)} to look at`}`,
  };
}

/** @returns what the button says that takes rows into the order */
export const takeInWords = (pieces: number, formatter: Counting): string =>
  `Take ${formatter.count(pieces, 'name')} in`;

/** @returns what became of the rows: those that could not be kept wait */
export const takenWords = (taken: number, left: number, formatter: Counting): string =>
  `${formatter.count(taken, 'name')} ${taken === 1 ? 'is' : 'are'} in.${
    left === 0
      ? ''
      : ` ${formatter.count(left, 'row')} cannot be kept yet and ${left === 1 ? 'waits' : 'wait'} below.`
  }`;

/** @returns that so many names are worth a look */
export const manyWords = (pieces: number, formatter: Counting): string =>
  `${formatter.count(pieces, 'name')} are many. Look whether all belong to this order.`;

export const moreRowsWords = (left: number, step: number, formatter: Counting): string =>
  left <= step
    ? `Show the last ${formatter.number(left, 0)}`
    : `Show ${formatter.number(step, 0)} of ${formatter.number(left, 0)} more`;

/** @returns how one size was meant, on a button: “2XL”, “2 of XL”, for every row that is written the same */
export function meantWords({ size, pieces }: SizeCount, rows: number, formatter: Counting): string {
  const meant = pieces === 1 ? size : `${formatter.number(pieces, 0)} of ${size}`;
  return rows === 1 ? meant : `${meant}, in all ${formatter.number(rows, 0)} rows`;
}

/** @returns what a row comes to where that is not plain from its cells */
export function rowWords({ understood, pieces, faults }: PreviewRow, formatter: Counting): string {
  const several = pieces > 1 && !understood.some(({ code }) => code === 'size');
  return [
    ...(several ? [`${formatter.number(pieces, 0)} pieces.`] : []),
    ...understood.map(understoodWords),
    ...(faults.length > 0 ? ['To look at, above.'] : []),
  ].join(' ');
}

/** @returns that nothing is taken of some columns */
export function notTakenWords(shows: readonly string[]): string {
  const named = shows.map((one) => `“\u2068${one}\u2069”`).join(', ');
  return `Nothing is taken of the ${shows.length === 1 ? 'column' : 'columns'} ${named}.`;
}

/** @returns that a quotation mark opens and never closes */
export const openQuoteWords = (lines: readonly number[]): string =>
  `A quotation mark opens on line ${lines.slice(0, 5).join(', ')} and never closes: it is kept as a letter.`;

/** @returns why a pasted text is not read */
export const pastedTooLargeWords: Wording = wording(
  'The pasted text is too large for a list of names.',
  'Paste only the rows of this order.',
);

/** @returns why a chosen file is not read: the disk refused, or it was moved meanwhile */
export const unreadableFileWords = (name: string): Wording =>
  wording(`“${name}” cannot be read.`, 'It may have been moved or changed. Choose it again.');

/** @returns why the order did not take the names */
export const notTakenInWords: Wording = wording(
  'The order could not take the names; nothing was changed.',
  'The list to print may be longer than a job keeps. Take fewer, or leave the list to print as it is.',
);

/** @returns what a column is called over its cells: by its head, else by its place */
export const columnWords = (at: number, head: string): string =>
  head.trim() === '' ? `Column ${at + 1}` : head.trim();

const partWords = { name: 'Name', size: 'Size', number: 'Number', pieces: 'How many' } as const;

/** @returns what a cell is called over its field: what is taken from it, with its own head where that says more */
export const cellLabelWords = (part: keyof typeof partWords, head: string): string =>
  head.trim() === '' || head.trim().toLowerCase() === partWords[part].toLowerCase()
    ? partWords[part]
    : `${partWords[part]}, “${head.trim()}”`;
