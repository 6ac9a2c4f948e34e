import { amountWords } from '@/app/_words/amountWords';
import { sizesWords } from '@/app/_words/docket/sizesWords';
import { minutesWords } from '@/app/_words/minutesWords';
import { type CostGroupId, costGroups, groupShares } from '@/lib/grid/costGroups';
import { type CostSheet, caseValue, wholeJob } from '@/lib/grid/costSheet';
import type { FigureRef } from '@/lib/grid/traceFigure';
import { formatNumber } from '@/shared/formatNumber';
import { currencyDigits } from '@/shared/tables/currencies';
import { costLines } from './costLines';
import { shownColumn } from './shownColumn';

interface ShownGroup {
  readonly id: CostGroupId;
  readonly label: string;
  readonly rowId: string;
  readonly text: string;
  readonly share: number;
  /** Whole per cent; those of all groups add to a hundred. */
  readonly percent: number;
}

interface ShownEach {
  readonly label: string;
  /** For whoever does not see the column. */
  readonly name: string;
  readonly figure: FigureRef;
  readonly text: string;
}

interface CostOverviewFigures {
  /** The dearest first; as written they add to the total. */
  readonly groups: readonly ShownGroup[];
  readonly total: string;
  readonly pieces: string;
  /** One piece by size, one more of the size most asked for, and how long the job takes. */
  readonly each: readonly ShownEach[];
}

/** The cost of a job as it is looked at first. */
export function costOverview(sheet: CostSheet, lineId: string, locale: string): CostOverviewFigures {
  const groups = groupShares(sheet);
  const shown = shownLines(sheet, locale);
  return {
    groups: groups.map((group) => ({ ...group, text: shown.textOf(group.id) })),
    total: shown.total,
    pieces: formatNumber(wholeJob(sheet, 'goodPieces'), locale, { maxDecimals: 0 }),
    each: eachOf(sheet, lineId, locale),
  };
}

// Helpers

/** Groups as the sums of their lines as those are written, so that no group tells another sum than the table. */
function shownLines(sheet: CostSheet, locale: string) {
  const { currency } = sheet;
  const lines = costLines(sheet).map(({ row: { id } }) => id);
  const { minor, parts, total } = shownColumn(sheet, lines, null, locale);
  const groupOf = (line: string) =>
    costGroups.find((group) => group.lines.some((one) => one === line))?.id ?? 'own';
  const textOf = (id: CostGroupId) => {
    const own = lines.flatMap((line, at) => (groupOf(line) === id ? [at] : []));
    if (minor === null) return parts[own[0] ?? -1] ?? '';
    const sum = own.reduce((running, at) => running + (minor[at] ?? 0), 0);
    return amountWords(sum / 10 ** (currencyDigits(currency) ?? 2), currency, locale);
  };
  return { textOf, total };
}

function eachOf(sheet: CostSheet, lineId: string, locale: string): readonly ShownEach[] {
  const money = (amount: number) => amountWords(amount, sheet.currency, locale);
  const cases = sheet.cases.flatMap((one, index) => (one.lineId === lineId ? [{ ...one, index }] : []));
  const alike: { sizes: string[]; text: string; index: number }[] = [];
  for (const { size, index } of cases) {
    const text = money(caseValue(sheet, 'fullCost', index));
    const last = alike[alike.length - 1];
    if (last?.text === text) last.sizes.push(size);
    else alike.push({ sizes: [size], text, index });
  }
  const most = cases.reduce<(typeof cases)[number] | undefined>(
    (found, one) => (found === undefined || one.quantity > found.quantity ? one : found),
    undefined,
  );
  return [
    ...alike.map(({ sizes, text, index }) => ({
      label: sizesWords(sizes),
      name: `Full cost, ${sizesWords(sizes)}`,
      figure: { rowId: 'fullCost', case: index },
      text,
    })),
    ...(most === undefined
      ? []
      : [
          {
            label: `one more ${most.size}`,
            name: `Cost of one more, ${most.size}`,
            figure: { rowId: 'incrementalCost', case: most.index },
            text: money(most.incrementalCost),
          },
        ]),
    {
      label: 'start to finish',
      name: 'Elapsed time, whole job',
      figure: { rowId: 'elapsed' },
      text: minutesWords(wholeJob(sheet, 'elapsed'), locale),
    },
  ];
}
