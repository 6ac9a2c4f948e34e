import type { CellRow } from './cells';
import { partOfHead } from './headWords';
import type { ColumnPart, NamesTable } from './namesTable';
import { readKnownSize } from './readSize';

/** Numbers as pieces bear them. */
export const isNumber = (text: string): boolean => /^#?\s*\p{Nd}{1,4}$/u.test(text.trim());

/**
 * What stands in which column: by the words at their heads, and where none is known by what is in them. Only a guess
 * that the maker sees and may change.
 */
export function findColumns(
  rows: readonly CellRow[],
  sizes: readonly string[],
): Pick<NamesTable, 'columns' | 'hasHead'> {
  const [first, ...others] = rows;
  const width = Math.max(0, ...rows.map(({ cells }) => cells.length));
  const heads = Array.from({ length: width }, (_, at) => partOfHead(first?.cells[at] ?? ''));
  // Somebody may be called “No”, but then there is a size beside it.
  const hasHead =
    heads.some((part) => part !== null) && !(first?.cells ?? []).some((cell) => isKnown(cell, sizes));
  const columns: (ColumnPart | null)[] = hasHead ? heads : heads.map(() => null);
  const body = (hasHead ? others : rows).slice(0, LOOKED_AT);
  const isOpen = (at: number) => columns[at] === null;
  const share = (at: number, is: (cell: string) => boolean): number => {
    const filled = body.map(({ cells }) => cells[at]?.trim() ?? '').filter((cell) => cell !== '');
    return filled.length === 0 ? 0 : filled.filter(is).length / filled.length;
  };
  const take = (part: ColumnPart, is: (cell: string) => boolean): void => {
    if (columns.includes(part)) return;
    const best = columns
      .map((_, at) => ({ at, share: isOpen(at) ? share(at, is) : 0 }))
      .toSorted((one, other) => other.share - one.share)[0];
    if (best !== undefined && best.share >= 0.5) columns[best.at] = part;
  };
  take('size', (cell) => isKnown(cell, sizes));
  // Where only the name lacks its word, what is left of the columns is it.
  if (!hasHead) take('number', isNumber);
  take('name', (cell) => /\p{L}/u.test(cell));
  return { columns: columns.map((part) => part ?? 'nothing'), hasHead };
}

// Helpers

/** Rows that tell what a column holds. */
const LOOKED_AT = 200;

function isKnown(cell: string, sizes: readonly string[]): boolean {
  const read = readKnownSize(cell, sizes);
  return read !== null && read.state !== 'none';
}
