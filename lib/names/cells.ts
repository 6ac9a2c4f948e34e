/** One row of a table as it was pasted, and the line of the text it begins on, from 1. */
export interface CellRow {
  readonly line: number;
  readonly cells: readonly string[];
}

/** A text cut into cells. */
interface Cells {
  readonly rows: readonly CellRow[];
  /** Lines on which a quote opens that never closes; it is kept as a sign of the cell. */
  readonly openQuotes: readonly number[];
}

/**
 * Cuts a text into cells by RFC 4180: cells in quotes may hold separators, line ends and doubled quotes. What that
 * standard does not know is taken as it stands: a quote within a cell, signs behind a closing quote, lines of any length.
 *
 * @param separator one sign
 * @returns rows without those that are wholly empty
 */
export function cellsOf(text: string, separator: string): Cells {
  const rows: CellRow[] = [];
  const openQuotes: number[] = [];
  let line = 1;
  for (let at = 0; at < text.length; ) {
    const begins = line;
    const cells: string[] = [];
    for (;;) {
      const cell = cellAt(text, at, separator);
      if (!cell.isClosed) openQuotes.push(line);
      cells.push(cell.value);
      line += lineEndsIn(text.slice(at, cell.end));
      at = cell.end + 1;
      if (text[cell.end] !== separator) break;
    }
    if (text[at - 1] === '\r' && text[at] === '\n') at += 1;
    line += 1;
    if (cells.some((cell) => cell.trim() !== '')) rows.push({ line: begins, cells });
  }
  return { rows, openQuotes };
}

// Helpers

interface Cell {
  readonly value: string;
  /** Where the sign stands that ends it; the length of the text where none does. */
  readonly end: number;
  readonly isClosed: boolean;
}

function cellAt(text: string, from: number, separator: string): Cell {
  if (text[from] !== '"') return plainCell(text, from, separator);
  let value = '';
  for (let at = from + 1; ; ) {
    const quote = text.indexOf('"', at);
    if (quote === -1) return { ...plainCell(text, from, separator), isClosed: false };
    value += text.slice(at, quote);
    if (text[quote + 1] === '"') {
      value += '"';
      at = quote + 2;
      continue;
    }
    const rest = plainCell(text, quote + 1, separator);
    return { value: value + rest.value, end: rest.end, isClosed: true };
  }
}

function plainCell(text: string, from: number, separator: string): Cell {
  let end = from;
  while (end < text.length && text[end] !== separator && text[end] !== '\n' && text[end] !== '\r') end += 1;
  return { value: text.slice(from, end), end, isClosed: true };
}

const lineEndsIn = (text: string): number => text.match(/\r\n|\r|\n/g)?.length ?? 0;
