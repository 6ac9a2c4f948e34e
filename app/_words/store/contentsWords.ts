import type { Formatter } from '@/app/_words/formatter';
import { bytesWords } from './bytesWords';

/** How much of each there is in a copy; `bytes` null where that is not known. */
export interface Contents {
  readonly jobs: number;
  readonly lists: number;
  readonly blanks: number;
  readonly pictures: number;
  readonly papers: number;
  readonly bytes: number | null;
}

/**
 * What a copy holds, in one line; what there is none of is left out.
 *
 * @example contentsWords(contents, formatter) // '9 jobs, 2 lists, 14 pictures, 31 MB'
 */
export function contentsWords(contents: Contents, formatter: Pick<Formatter, 'count' | 'number'>): string {
  const counted: readonly (readonly [number, string])[] = [
    [contents.jobs, 'job'],
    [contents.lists, 'list'],
    [contents.blanks, 'blank'],
    [contents.pictures, 'picture'],
    [contents.papers, 'paper'],
  ];
  const words = counted.flatMap(([count, one]) => (count > 0 ? [formatter.count(count, one)] : []));
  const size = contents.bytes === null ? [] : [bytesWords(contents.bytes, formatter)];
  return [...(words.length === 0 ? ['your rates'] : words), ...size].join(', ');
}

/** @returns that a copy was saved, under which name, and what it holds. */
export const copySavedWords = (
  name: string,
  contents: Contents,
  formatter: Pick<Formatter, 'count' | 'number'>,
): string => `Saved as ${name}: ${contentsWords(contents, formatter)}.`;
