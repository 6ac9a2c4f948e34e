import type { NameRow } from '@/shared/schemas/order';
import { textCell } from '@/shared/textCell';

/** A form in which a club says who gets which size: plain data, for a table, a message or a printed page. */
interface SizeForm {
  readonly title: string;
  /** The blank's own, in its order. */
  readonly sizes: readonly string[];
  /** What is known already; empty ones are to be filled. */
  readonly rows: readonly Pick<NameRow, 'name' | 'size' | 'number'>[];
}

/** Its words in the customer's language. */
export interface SizeFormWords {
  readonly name: string;
  readonly size: string;
  /** Null where no piece bears a number. */
  readonly number: string | null;
  /** How to fill it, in one line. */
  readonly howTo: string;
}

/** A form with what is known and so many empty rows more. */
export const sizeForm = (
  title: string,
  sizes: readonly string[],
  rows: SizeForm['rows'],
  empty: number,
): SizeForm => ({
  title,
  sizes,
  rows: [...rows, ...Array.from({ length: empty }, () => ({ name: '', size: '', number: '' }))],
});

/** Comma-separated values (RFC 4180) that `readNames` reads back: heads first, then a row for each person. */
export function sizeFormCsv({ rows }: SizeForm, words: SizeFormWords): string {
  const head = [words.name, words.size, ...(words.number === null ? [] : [words.number])];
  return [head, ...rows.map((row) => cellsOfRow(row, words))]
    .map((cells) => `${cells.map((cell) => textCell(cell, ',')).join(',')}\r\n`)
    .join('');
}

/** The form as a message: how to fill it, the sizes, and a line for each person, in the order it is read back. */
export function sizeFormMessage({ title, sizes, rows }: SizeForm, words: SizeFormWords): string {
  const heads = [words.name, words.size, ...(words.number === null ? [] : [words.number])];
  const filled = rows.filter(({ name }) => name !== '');
  return [
    title,
    words.howTo,
    `${words.size}: ${sizes.join(', ')}`,
    '',
    heads.join('; '),
    ...filled.map((row) => cellsOfRow(row, words).join('; ')),
  ].join('\n');
}

// Helpers

const cellsOfRow = (
  { name, size, number }: SizeForm['rows'][number],
  words: SizeFormWords,
): readonly string[] => [name, size, ...(words.number === null ? [] : [number])];
