import type { CostSheet } from '@/lib/grid/costSheet';
import type { FigureRef } from '@/lib/grid/traceFigure';
import type { Job } from '@/shared/schemas/job';

/** What a figure may be named after. */
export interface FigureNames {
  readonly sheet: CostSheet;
  /** The job the sheet was made of. */
  readonly job: Job;
}

/** @returns what a figure is, with its placement called by the maker's name for it. */
export function figureName({ sheet, job }: FigureNames, ref: FigureRef, label: string): string {
  if (ref.rowId === 'quantity') return `Pieces${sizeOf({ sheet, job }, ref)}`;
  const row = sheet.rows.find(({ id }) => id === ref.rowId);
  if (row?.slot === undefined || row.table === 'job') return label;
  const placement = lineOf({ sheet, job }, ref)?.placements[row.slot - 1]?.name;
  if (placement === undefined) return label;
  return label
    .replace(/\bprint size \d+/, `the print size of ${placement}`)
    .replace(/\bPrints \d+/, `Prints of ${placement}`)
    .replace(/\b(print|placement) \d+/i, placement)
    .replace(/\bpress (\d+)/i, (pressed) => `${pressed} (${placement})`);
}

/** @returns of what a figure is: one piece of a size, or the whole job; nothing where that is no question. */
export function figurePlace({ sheet, job }: FigureNames, ref: FigureRef): string {
  if (ref.rowId === 'quantity') return '';
  const size = sizeOf({ sheet, job }, ref);
  if (size !== '') return `one piece${size}`;
  const row = sheet.rows.find(({ id }) => id === ref.rowId);
  if (row?.table === 'case') return 'whole job';
  return row?.table === 'line' && sheet.lineIds.length > 1
    ? lineName(job, sheet.lineIds[ref.line ?? 0] ?? '')
    : '';
}

// Helpers

function lineOf({ sheet, job }: FigureNames, ref: FigureRef) {
  const id = ref.line === undefined ? sheet.cases[ref.case ?? 0]?.lineId : sheet.lineIds[ref.line];
  // In the whole job a placement's number stands for one of every line: only a single line gives it a name.
  if (ref.line === undefined && ref.case === undefined && sheet.lineIds.length > 1) return undefined;
  return job.lines.find((line) => line.id === id);
}

function sizeOf({ sheet, job }: FigureNames, ref: FigureRef): string {
  const one = sheet.cases[ref.case ?? -1];
  if (one === undefined) return '';
  return ` in ${one.size}${sheet.lineIds.length > 1 ? `, ${lineName(job, one.lineId)}` : ''}`;
}

const lineName = (job: Job, id: string): string => job.lines.find((line) => line.id === id)?.name ?? id;
