import { mostEntries, textLimits } from '@/shared/limits';
import { type NameRow, nameRowSchema, orderLineSchema } from '@/shared/schemas/order';
import { cellText } from '@/shared/textCell';
import type { CellRow } from './cells';
import { isNumber } from './findColumns';
import type { NameFault, NamesPreview, PreviewRow, Understood } from './namePreview';
import { type ColumnPart, type NamesTable, peopleRows } from './namesTable';
import { personKey } from './personKey';
import { readSize } from './readSize';

/** More than that are more often a slip than a club. */
const MANY_ROWS = 500;
const MOST_ROWS = mostEntries(orderLineSchema, ['names']);
const MOST_LETTERS = {
  name: textLimits(nameRowSchema, ['name']).longest,
  size: textLimits(nameRowSchema, ['size']).longest,
  number: textLimits(nameRowSchema, ['number']).longest,
} as const;

/**
 * What a table of names would come to. Every row stays, whatever is wrong with it.
 *
 * @param sizes the blank's own
 * @param already rows that the order has and keeps
 */
export function previewNames(
  table: NamesTable,
  sizes: readonly string[],
  already: readonly NameRow[] = [],
): NamesPreview {
  // Thousands of rows have a handful of sizes.
  const known = new Map<string, ReadSize>();
  const sizeOf = (asWritten: string): ReadSize => {
    const read = known.get(asWritten) ?? sizeOfCell(asWritten, sizes);
    known.set(asWritten, read);
    return read;
  };
  const rows = peopleRows(table).map((row) => readRow(row, table.columns, sizeOf));
  const people = new Map<string, number[]>();
  for (const { name } of already) if (name.trim() !== '') people.set(personKey(name), [0]);
  for (const { name, line } of rows) {
    if (name === '') continue;
    const key = personKey(name);
    people.set(key, [...(people.get(key) ?? []), line]);
  }
  let pieces = already.length;
  const judged = rows.map((row): PreviewRow => {
    pieces += row.pieces;
    const lines = (people.get(personKey(row.name)) ?? []).filter((line) => line !== row.line);
    return {
      ...row,
      faults: [
        ...row.faults,
        ...(row.name !== '' && lines.length > 0 ? [{ code: 'samePerson', lines } as const] : []),
        ...(pieces > MOST_ROWS ? [{ code: 'overMost', most: MOST_ROWS } as const] : []),
      ],
    };
  });
  const own = pieces - already.length;
  return {
    rows: judged,
    notTaken: notTaken(table),
    openQuotes: table.openQuotes,
    pieces: own,
    isMany: own > MANY_ROWS,
  };
}

// Helpers

function readRow(
  { line, cells }: CellRow,
  columns: readonly ColumnPart[],
  sizeOf: (asWritten: string) => ReadSize,
): PreviewRow {
  const cellsAs = (part: ColumnPart): readonly string[] =>
    columns
      .flatMap((own, at) => (own === part ? [cellText((cells[at] ?? '').trim())] : []))
      .filter((cell) => cell !== '');
  const written = cellsAs('name').join(' ');
  const name = written.replace(/\s*[\r\n\t]+\s*/g, ' ');
  const size = sizeOf(cellsAs('size').join(' / '));
  const number = numberOf(cellsAs('number').join(' '));
  const count = countOf(cellsAs('pieces').join(' '));
  const more = cells.slice(columns.length).filter((cell) => cell.trim() !== '');
  return {
    ...{ line, cells, name, size: size.size, number: number.number, pieces: size.pieces * count.pieces },
    understood: [...size.understood, ...number.understood],
    faults: [
      ...(name === '' ? [{ code: 'noName' } as const] : []),
      ...size.faults,
      ...number.faults,
      ...count.faults,
      ...(name === written ? [] : [{ code: 'lineBreaks' } as const]),
      ...(more.length === 0 ? [] : [{ code: 'moreCells', cells: more } as const]),
      ...tooLong('name', name),
      ...tooLong('size', size.size),
      ...tooLong('number', number.number),
    ],
  };
}

interface Told {
  readonly understood: readonly Understood[];
  readonly faults: readonly NameFault[];
}
const nothingTold: Told = { understood: [], faults: [] };

interface ReadSize extends Told {
  readonly size: string;
  readonly pieces: number;
}

function sizeOfCell(asWritten: string, sizes: readonly string[]): ReadSize {
  const [only, ...others] = sizes;
  if (only !== undefined && others.length === 0 && asWritten === '')
    return { ...nothingTold, size: only, pieces: 1, understood: [{ code: 'onlySize', size: only }] };
  const read = readSize(asWritten, sizes);
  const faulty = (fault: NameFault) => ({ ...nothingTold, size: asWritten, pieces: 1, faults: [fault] });
  switch (read.state) {
    case 'none':
      return faulty({ code: 'noSize' });
    case 'known': {
      const { size, pieces, isAsWritten } = read;
      return {
        ...{ size, pieces, faults: [] },
        understood: isAsWritten ? [] : [{ code: 'size', asWritten, size, pieces }],
      };
    }
    case 'unknown':
      return faulty({ code: 'unknownSize', asWritten, nearest: read.nearest });
    case 'several':
      return faulty({ code: 'severalSizes', asWritten, sizes: read.sizes });
    case 'twoMeanings':
      return faulty({ code: 'twoMeanings', asWritten, offers: read.offers });
    default:
      return read satisfies never;
  }
}

/** A number is kept as it is written, “07” too; only the mark before it goes. */
function numberOf(asWritten: string): Told & { readonly number: string } {
  if (asWritten === '') return { ...nothingTold, number: '' };
  if (!isNumber(asWritten))
    return { ...nothingTold, number: asWritten, faults: [{ code: 'noNumber', asWritten }] };
  const number = asWritten.replace(/^#\s*/, '');
  return {
    ...{ number, faults: [] },
    understood: number === asWritten ? [] : [{ code: 'number', asWritten, number }],
  };
}

function countOf(asWritten: string): Pick<Told, 'faults'> & { readonly pieces: number } {
  const count = /^\d{1,4}$/.test(asWritten) ? Number(asWritten) : 0;
  if (asWritten === '' || count > 0) return { pieces: Math.max(1, count), faults: [] };
  return { pieces: 1, faults: [{ code: 'noCount', asWritten }] };
}

function tooLong(part: keyof typeof MOST_LETTERS, text: string): readonly NameFault[] {
  const most = MOST_LETTERS[part];
  return text.length > most ? [{ code: 'tooLong', part, letters: text.length, most }] : [];
}

const notTaken = ({ rows, columns }: NamesTable): NamesPreview['notTaken'] =>
  columns.flatMap((part, column) => {
    const shows = rows.map(({ cells }) => (cells[column] ?? '').trim()).find((cell) => cell !== '');
    return part === 'nothing' && shows !== undefined ? [{ column, shows }] : [];
  });
