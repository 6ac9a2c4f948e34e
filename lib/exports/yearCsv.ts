import type { HourRow } from '@/lib/year/hourRows';
import type { RowAbout, YearRow } from '@/lib/year/yearRow';
import { fromMinor, type MinorUnits } from '@/shared/money';
import { textCell } from '@/shared/textCell';

/** Words and names that stand in a row. */
interface YearCsvWords {
  readonly kindOf: (row: YearRow | HourRow) => string;
  /** What was noted with hours, and whether nobody noted them; empty where there is nothing to say. */
  readonly noteOf: (row: HourRow) => string;
  /** Whom it was for or from, and the number that papers bear; empty where there is none. */
  readonly aboutOf: (about: RowAbout) => { readonly name: string; readonly number: string };
  readonly wayOf: (row: YearRow) => string;
  /** Why a row is in no sum; empty where it is. */
  readonly leftOutOf: (row: YearRow | HourRow) => string;
}

/**
 * A year for whoever keeps the books: a row for each entry and each amount of a paper, those in no sum among them with
 * the reason. Amounts are signed, with a point and no groups, in the digits of their currency; tax stands where a paper
 * says it. RFC 4180, with a header row.
 */
export function yearCsv(rows: readonly YearRow[], hours: readonly HourRow[], words: YearCsvWords): string {
  const header = ['date', 'kind', 'what', 'for', 'number', 'way', 'amount', 'currency', 'tax inside'];
  const more = ['hours', 'receipt', 'not counted', 'entry'];
  return [
    [...header, ...more],
    ...rows.map((row) => moneyCells(row, words)),
    ...hours.map((row) => hourCells(row, words)),
  ]
    .map((cells) => `${cells.join(',')}\r\n`)
    .join('');
}

// Helpers

type Cells = readonly (string | number)[];

function moneyCells(row: YearRow, words: YearCsvWords): Cells {
  const { name, number } = words.aboutOf(row.about);
  const money = (minor: number) => decimalText(minor, row.currency);
  return [
    ...[row.day, textCell(words.kindOf(row)), textCell(row.what), textCell(name), textCell(number)],
    ...[textCell(words.wayOf(row)), money(row.amountMinor), row.currency],
    row.flow === 'taking' && row.taxMinor !== null ? money(row.taxMinor) : '',
    ...['', textCell(row.receipt ?? ''), textCell(words.leftOutOf(row)), row.id],
  ];
}

function hourCells(row: HourRow, words: YearCsvWords): Cells {
  const { name, number } = words.aboutOf(row.about);
  return [
    ...[row.day, textCell(words.kindOf(row)), textCell(words.noteOf(row)), textCell(name), textCell(number)],
    ...['', '', '', '', Number((row.minutes / 60).toFixed(4)), '', textCell(words.leftOutOf(row)), row.id],
  ];
}

/** All digits of the currency, as books have them. */
function decimalText(minor: number, currency: string): string {
  const digits = String(fromMinor(1 as MinorUnits, currency)).split('.')[1]?.length ?? 0;
  return fromMinor(minor as MinorUnits, currency).toFixed(digits);
}
