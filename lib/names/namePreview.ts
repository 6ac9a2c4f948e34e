import type { SizeCount } from './readSize';

/** What is wrong with a row. It stays in the preview, and is taken as it stands unless it cannot be kept at all. */
export type NameFault =
  | { readonly code: 'noName' }
  | { readonly code: 'noSize' }
  | { readonly code: 'unknownSize'; readonly asWritten: string; readonly nearest: string | null }
  | { readonly code: 'severalSizes'; readonly asWritten: string; readonly sizes: readonly SizeCount[] }
  | { readonly code: 'twoMeanings'; readonly asWritten: string; readonly offers: readonly SizeCount[] }
  /** Lines on which the same person stands too; 0 for one who is in the order already. */
  | { readonly code: 'samePerson'; readonly lines: readonly number[] }
  | { readonly code: 'noNumber'; readonly asWritten: string }
  | { readonly code: 'noCount'; readonly asWritten: string }
  /** The name runs over several lines: a quote may have closed too late. */
  | { readonly code: 'lineBreaks' }
  /** Cells that no column is named for. */
  | { readonly code: 'moreCells'; readonly cells: readonly string[] }
  /** Cannot be kept until it is shorter. */
  | {
      readonly code: 'tooLong';
      readonly part: 'name' | 'size' | 'number';
      readonly letters: number;
      readonly most: number;
    }
  /** Cannot be kept: an order holds no more names for a line. */
  | { readonly code: 'overMost'; readonly most: number };

/** What was read otherwise than it is written. */
export type Understood =
  | { readonly code: 'size'; readonly asWritten: string; readonly size: string; readonly pieces: number }
  /** The blank has but this one, and nothing is said of sizes. */
  | { readonly code: 'onlySize'; readonly size: string }
  | { readonly code: 'number'; readonly asWritten: string; readonly number: string };

/** One row as it would come in. */
export interface PreviewRow {
  /** Of the pasted text, from 1. */
  readonly line: number;
  readonly cells: readonly string[];
  readonly name: string;
  /** As the blank calls it; as it was written where it is none of the blank's. */
  readonly size: string;
  readonly number: string;
  /** Rows it comes to: “2 x L” is two. */
  readonly pieces: number;
  readonly understood: readonly Understood[];
  readonly faults: readonly NameFault[];
}

/** All that was pasted, as it would come in. */
export interface NamesPreview {
  readonly rows: readonly PreviewRow[];
  /** Columns of which nothing is taken, with what stands at their head or first in them. */
  readonly notTaken: readonly { readonly column: number; readonly shows: string }[];
  readonly openQuotes: readonly number[];
  /** Pieces of all rows; so many are worth a look before they are taken. */
  readonly pieces: number;
  readonly isMany: boolean;
}

/** Faults with which a row cannot be kept. */
const stopping: ReadonlySet<NameFault['code']> = new Set(['tooLong', 'overMost']);

/** @returns whether a row can be taken into an order as it is. */
export const canBeTaken = ({ faults }: PreviewRow): boolean => !faults.some(({ code }) => stopping.has(code));
