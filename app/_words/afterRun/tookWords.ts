import type { Formatter } from '@/app/_words/formatter';
import { hoursWords } from '@/app/_words/minutesWords';
import type { RunMoves } from '@/lib/stock/runMoves';
import type { RunResult } from '@/lib/variances/runResult';
import type { StandardWork } from '@/shared/schemas/making/runPapers';
import type { StockItem } from '@/shared/schemas/stock';

/**
 * “41 blanks, 58 sheets, 44 mL, 8 h 24 min; 3 figures as planned”
 *
 * @param metresEach of a roll, metres that count for one sheet; null of cut paper
 */
export function tookWords(
  { actuals }: Pick<RunResult, 'actuals'>,
  metresEach: number | null,
  formatter: Formatter,
  locale: string,
): { readonly key: string; readonly after: string } {
  const { blanks, sheets, ink, labour, elements, freight, otherCost, fees, revenue } = actuals;
  const untimed = elements.filter(({ actual }) => actual === null).length;
  const isAllTold = elements.some(({ element, actual }) => element === 'rest' && actual !== null);
  const planned =
    [blanks, sheets, ink].filter(({ quantityFrom }) => quantityFrom === 'standard').length +
    [freight, otherCost, fees, ...(revenue === null ? [] : [revenue])].filter(
      ({ from }) => from === 'standard',
    ).length +
    (labour.quantityFrom === 'standard' ? 1 : isAllTold ? 0 : untimed);
  return {
    key: [
      formatter.count(wholeUp(blanks.quantity), 'blank'),
      metresEach === null
        ? formatter.count(wholeUp(sheets.quantity), 'sheet')
        : `${formatter.number(sheets.quantity * metresEach, 1)} m of roll`,
      `${formatter.number(ink.quantity, 1)} mL`,
      hoursWords(labour.quantity, locale),
    ].join(', '),
    after: planned === 0 ? '' : `; ${formatter.count(planned, 'figure')} as planned`,
  };
}

/** Names of what lies in stock. */
interface StockNames {
  readonly blank: (id: string) => string;
  readonly sheet: (id: string) => string;
}

/** “White shirt, M: 10 used” for each move, less than nothing as what goes back. */
export function stockMoveWords(
  { item, quantity, cause, grade }: RunMoves['moves'][number],
  works: readonly StandardWork[],
  names: StockNames,
  formatter: Formatter,
): string {
  const isOut = cause === 'used' || cause === 'scrapped';
  const isBack = isOut === quantity > 0;
  const what = isBack ? `fewer ${causeNames[cause] ?? cause}` : (causeNames[cause] ?? cause);
  const second = grade === 'second' ? ' of second grade' : '';
  return `${itemWords(item, works, names)}: ${formatter.number(Math.abs(quantity), 2)}${second} ${what}`;
}

/** What cannot be booked by itself, and what to do. */
export function unsaidWords(unsaid: RunMoves['unsaid'][number], formatter: Formatter): string {
  const number = (value: number) => formatter.number(Math.abs(value), 2);
  switch (unsaid.what) {
    case 'blanks':
      return `${number(unsaid.pieces)} blanks ${unsaid.pieces > 0 ? 'more' : 'fewer'} were used than were pressed or found faulty, of sizes nobody noted: correct them in stock.`;
    case 'unfinished':
      return unsaid.pieces > 0
        ? `${unsaid.size}: ${number(unsaid.pieces)} begun and neither finished nor spoiled: note the missing press, or correct it in stock.`
        : `${unsaid.size}: ${number(unsaid.pieces)} noted at a later press alone; their blanks are taken all the same. Note the first press.`;
    case 'sheets':
      return `${number(unsaid.sheets)} sheets ${unsaid.sheets > 0 ? 'more' : 'fewer'} than were noted, of several papers: correct them in stock.`;
    case 'ink':
      return `${number(unsaid.mL)} mL of ink, of channels nobody noted: note it in stock.`;
    default:
      return unsaid satisfies never;
  }
}

// Helpers

/** Nobody uses a part of a blank or a sheet. */
const wholeUp = (quantity: number): number => Math.ceil(quantity - 1e-9);

const causeNames: Readonly<Record<string, string>> = { used: 'used', scrapped: 'spoiled', made: 'made' };

function itemWords(item: StockItem, works: readonly StandardWork[], names: StockNames): string {
  switch (item.kind) {
    case 'blank':
      return `${names.blank(item.blankId)}, ${item.size}${item.lot === null ? '' : `, lot ${item.lot}`}`;
    case 'paper':
      return names.sheet(item.sheetId);
    case 'ink':
      return item.name;
    case 'finished': {
      const line = works
        .find(({ jobId }) => jobId === item.jobId)
        ?.lines.find(({ lineId }) => lineId === item.lineId);
      return `${line?.name ?? 'Finished piece'}, ${item.size}`;
    }
    case 'consumable':
      return 'Something used up';
    default:
      return item satisfies never;
  }
}
