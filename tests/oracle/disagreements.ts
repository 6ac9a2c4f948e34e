import type { CostedJob } from '@/lib/grid/costJob';
import type { GridRow } from '@/lib/grid/rowTypes';
import type { JobInput } from '@/shared/schemas/request';
import type { Figures } from './figuresOf';
import { perSheetOf } from './perSheetOf';
import { agrees, recompute } from './recompute';

/** Differences of large figures: near 0 they are held to 1e-9 outright. */
const differences = new Set(['spoilage', 'profit', 'margin', 'markup', 'payPerHour', 'keepShare']);

/**
 * Compares every computed cell of a cost sheet with the recomputation.
 *
 * @returns one line of text for each cell that differs, and for each that only one of the two has
 */
export function disagreements(input: JobInput, job: CostedJob): readonly string[] {
  const { sheet } = job;
  const wanted = recompute(input, perSheetOf(job));
  const computed = (table: GridRow['table']) =>
    sheet.rows.filter((row) => row.table === table && row.formula !== null);
  const column = (place: string, rows: readonly GridRow[], figures: Figures, at: (id: string) => unknown) =>
    rows.flatMap(({ id }) => compare(`${id} of ${place}`, at(id), figures[id], differences.has(id)));
  const caseRows = computed('case');
  return [
    ...column('the job', computed('job'), wanted.job, (id) => sheet.jobValues[id]),
    ...sheet.lineIds.flatMap((line, index) =>
      column(line, computed('line'), wanted.lines[index] ?? {}, (id) => sheet.lineValues[id]?.[index]),
    ),
    ...sheet.cases.flatMap(({ lineId, size, quantity }, index) => {
      const one = wanted.cases[index];
      if (one?.lineId !== lineId || one.size !== size || !one.quantity.eq(quantity))
        return [`case ${index} is ${lineId} ${size} × ${quantity}`];
      return column(`${lineId} ${size}`, caseRows, one.figures, (id) => sheet.values[id]?.[index]);
    }),
    ...column(
      'the whole job',
      caseRows.filter(({ total }) => total !== undefined),
      wanted.whole,
      (id) => sheet.values[id]?.[sheet.cases.length],
    ),
    ...compare('full cost of the sheet', sheet.fullCost, wanted.whole.fullCost, false),
    ...(sheet.cases.length === wanted.cases.length
      ? []
      : [`${sheet.cases.length} cases and not ${wanted.cases.length}`]),
  ];
}

function compare(
  place: string,
  value: unknown,
  wanted: Figures[string] | undefined,
  isDifference: boolean,
): readonly string[] {
  if (typeof value !== 'number') return [`${place}: the grid has ${value}`];
  if (wanted === undefined) return [`${place}: the recomputation does not know it`];
  return agrees(value, wanted, isDifference)
    ? []
    : [`${place}: ${value} and not ${wanted.toSignificantDigits(17).toString()}`];
}
