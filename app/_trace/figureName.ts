import type { CostSheet } from '@/lib/grid/costSheet';
import type { FigureRef } from '@/lib/grid/traceFigure';
import type { Job } from '@/shared/schemas/job';
import type { JobInput } from '@/shared/schemas/request';

/** What a figure may be named after. */
export interface FigureNames {
  readonly sheet: CostSheet;
  /** The documents the sheet was made of. */
  readonly input: JobInput;
}

/** @returns what a figure is, with its placement called by the maker's name for it. */
export function figureName(names: FigureNames, ref: FigureRef, label: string): string {
  if (ref.rowId === 'quantity') return `Pieces${sizeOf(names, ref)}`;
  const row = names.sheet.rows.find(({ id }) => id === ref.rowId);
  if (row?.slot === undefined || row.table === 'job') return label;
  const placement = lineOf(names, ref)?.placements[row.slot - 1]?.name;
  if (placement === undefined) return label;
  return label
    .replace(/\bprint size \d+/, `the print size of ${placement}`)
    .replace(/\bPrints \d+/, `Prints of ${placement}`)
    .replace(/\b(print|placement) \d+/i, placement)
    .replace(/\bpress (\d+)/i, (pressed) => `${pressed} (${placement})`);
}

/** @returns of what a figure is: one piece of a size, or the whole job; nothing where that is no question. */
export function figurePlace(names: FigureNames, ref: FigureRef): string {
  if (ref.rowId === 'quantity') return '';
  const { sheet, input } = names;
  const size = sizeOf(names, ref);
  if (size !== '') return `one piece${size}`;
  const row = sheet.rows.find(({ id }) => id === ref.rowId);
  if (row?.table === 'case') return 'whole job';
  return row?.table === 'line' && sheet.lineIds.length > 1
    ? lineName(input.job, sheet.lineIds[ref.line ?? 0] ?? '')
    : '';
}

// Helpers

function lineOf({ sheet, input }: FigureNames, ref: FigureRef) {
  const id = ref.line === undefined ? sheet.cases[ref.case ?? 0]?.lineId : sheet.lineIds[ref.line];
  // In the whole job a placement's number stands for one of every line: only a single line gives it a name.
  if (ref.line === undefined && ref.case === undefined && sheet.lineIds.length > 1) return undefined;
  return input.job.lines.find((line) => line.id === id);
}

function sizeOf({ sheet, input }: FigureNames, ref: FigureRef): string {
  const one = sheet.cases[ref.case ?? -1];
  if (one === undefined) return '';
  return ` in ${one.size}${sheet.lineIds.length > 1 ? `, ${lineName(input.job, one.lineId)}` : ''}`;
}

const lineName = (job: Job, id: string): string => job.lines.find((line) => line.id === id)?.name ?? id;
