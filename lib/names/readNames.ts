import { cellsOf } from './cells';
import { findColumns } from './findColumns';
import { messageCells, messageColumns } from './messageCells';
import type { NamesTable } from './namesTable';
import { type Separator, separatorOf } from './separatorOf';

/**
 * Reads what was pasted, or the text of a CSV file: a table from a spreadsheet (tabs), from a file (commas, semicolons) or
 * from a page (upright strokes), else the lines of a message.
 *
 * @param sizes the blank's own, by which a column of sizes is known
 * @param asked the sign that parts the cells, where the maker knows better
 */
export function readNames(text: string, sizes: readonly string[], asked?: Separator): NamesTable {
  const bare = text.replace(/^\uFEFF/, '');
  const [, told, rest = bare] = /^sep=(.)(?:\r\n|\r|\n)([\s\S]*)$/i.exec(bare) ?? [];
  const separator = asked ?? told ?? separatorOf(bare);
  if (separator === null) {
    const rows = messageCells(bare, sizes);
    return { rows, columns: messageColumns, hasHead: false, openQuotes: [], isMessage: true };
  }
  const { rows, openQuotes } = cellsOf(rest, separator);
  const plain = separator === '|' ? rows.flatMap(({ line, cells }) => strokeRow(line, cells)) : rows;
  return { rows: plain, ...findColumns(plain, sizes), openQuotes, isMessage: false };
}

// Helpers

/** Tables of messages have strokes at both ends, and a line of dashes under the head. */
function strokeRow(line: number, cells: readonly string[]): NamesTable['rows'] {
  const inner = cells.slice(cells[0]?.trim() === '' ? 1 : 0, cells.at(-1)?.trim() === '' ? -1 : undefined);
  return inner.every((cell) => /^\s*:?-+:?\s*$/.test(cell)) ? [] : [{ line, cells: inner }];
}
