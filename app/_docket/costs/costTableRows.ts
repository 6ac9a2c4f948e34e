import type { Family } from '@/app/_controls/FamilyMark';
import { amountWords } from '@/app/_words/amountWords';
import { minutesWords } from '@/app/_words/minutesWords';
import { type CostSheet, caseValue, wholeJob } from '@/lib/grid/costSheet';
import { costLines } from './costLines';
import { shownColumn } from './shownColumn';

export interface CostTableRow {
  readonly id: string;
  readonly label: string;
  readonly mark: { readonly family: Family; readonly shade: 1 | 2 | 3 } | null;
  /** As written, one for each size. */
  readonly texts: readonly string[];
  /** Where a text was moved by a cent so that its column adds up: what it would be by itself, size by size. */
  readonly byThemselves?: readonly (string | null)[];
  readonly wholeByItself?: string | null;
  /** Null where the whole job has no such figure. */
  readonly whole: string | null;
}

interface CostTableGroup {
  readonly id: 'lines' | 'total' | 'beside';
  readonly rows: readonly CostTableRow[];
}

/**
 * The cost table as it is written: the lines that add, what they add to, and beneath it the times and the cost of
 * one more.
 *
 * @param columns the cases that are shown, by their place in the sheet
 */
export function costTableRows(
  sheet: CostSheet,
  columns: readonly { readonly index: number }[],
  locale: string,
): readonly CostTableGroup[] {
  const lines = costLines(sheet);
  const ids = lines.map(({ row }) => row.id);
  const shown = columns.map(({ index }) => shownColumn(sheet, ids, index, locale));
  const whole = shownColumn(sheet, ids, null, locale);
  const labelOf = (id: string) => sheet.rows.find((row) => row.id === id)?.label ?? id;
  return [
    {
      id: 'lines',
      rows: lines.map(({ row, family, shade }, at) => ({
        id: row.id,
        label: row.label,
        mark: { family, shade },
        texts: shown.map(({ parts }) => parts[at] ?? ''),
        byThemselves: shown.map(({ byThemselves }) => byThemselves[at] ?? null),
        wholeByItself: whole.byThemselves[at] ?? null,
        whole: whole.parts[at] ?? '',
      })),
    },
    {
      id: 'total',
      rows: [
        {
          id: 'fullCost',
          label: labelOf('fullCost'),
          mark: null,
          texts: shown.map(({ total }) => total),
          whole: whole.total,
        },
      ],
    },
    {
      id: 'beside',
      rows: [
        {
          id: 'incrementalCost',
          label: labelOf('incrementalCost'),
          mark: null,
          texts: columns.map(({ index }) =>
            amountWords(caseValue(sheet, 'incrementalCost', index), sheet.currency, locale),
          ),
          // One more of everything is no figure that anybody asks for.
          whole: null,
        },
        ...timeRows.map((id) => ({
          id,
          label: labelOf(id),
          mark: null,
          texts: columns.map(({ index }) => minutesWords(caseValue(sheet, id, index), locale)),
          whole: minutesWords(wholeJob(sheet, id), locale),
        })),
      ],
    },
  ];
}

// Helpers

const timeRows = ['attended', 'unattended', 'elapsed'] as const;
