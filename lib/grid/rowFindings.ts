import { makeFinding } from '@/lib/findings/makeFinding';
import type { Finding } from '@/shared/finding';
import { MOST_PLACEMENTS } from '@/shared/schemas/job';
import type { OwnRow } from '@/shared/schemas/ownRow';
import { type CostSheet, wholeJob } from './costSheet';
import type { GridFault } from './evaluateGrid';
import { expandRows } from './expandRows';
import { type FormulaProblem, MOST_NESTED } from './readOwnFormulas';

/**
 * Troubles of the maker's own formulas as findings.
 *
 * @returns ROW-01 for a formula that cannot be read, ROW-02 for one that leads back to itself
 */
export function formulaFindings(
  problems: readonly FormulaProblem[],
  workshopRows: readonly OwnRow[],
  jobRows: readonly OwnRow[],
): readonly Finding[] {
  return problems.map((problem) => {
    const ofJob = jobRows.findIndex(({ id }) => id === problem.rowId);
    const ofWorkshop = workshopRows.findIndex(({ id }) => id === problem.rowId);
    const row = jobRows[ofJob] ?? workshopRows[ofWorkshop];
    const common = {
      severity: 'stop',
      waivable: false,
      where: {
        document: ofJob >= 0 ? 'job' : 'workshop',
        path: ['ownRows', ofJob >= 0 ? ofJob : ofWorkshop, 'cost', 'formula'],
      },
    } as const;
    const label = row?.label ?? problem.rowId;
    switch (problem.kind) {
      case 'circle':
        return makeFinding({
          ...common,
          id: 'ROW-02',
          facts: { label, chain: labelsOf(problem.names, [...workshopRows, ...jobRows]).join(' → ') },
        });
      case 'unreadable':
        return makeFinding({
          ...common,
          id: 'ROW-01',
          variant: problem.kind,
          facts: { label, at: problem.at + 1 },
        });
      case 'tooDeep':
        return makeFinding({
          ...common,
          id: 'ROW-01',
          variant: problem.kind,
          facts: { label, at: problem.at + 1, most: MOST_NESTED },
        });
      case 'comma':
        return makeFinding({
          ...common,
          id: 'ROW-01',
          variant: problem.kind,
          facts: { label, at: problem.at + 1 },
        });
      case 'decimalComma':
        return makeFinding({
          ...common,
          id: 'ROW-01',
          variant: problem.kind,
          facts: { label, at: problem.at + 1, text: problem.text, instead: problem.instead },
          fix:
            problem.mended === null
              ? null
              : {
                  label: 'pointDecimals',
                  facts: {},
                  changes: [{ ...common.where, value: problem.mended }],
                },
        });
      case 'unclearComma':
        return makeFinding({
          ...common,
          id: 'ROW-01',
          variant: problem.kind,
          facts: {
            label,
            at: problem.at + 1,
            text: problem.text,
            instead: problem.instead,
            other: problem.other,
          },
        });
      case 'badSign':
        return makeFinding({
          ...common,
          id: 'ROW-01',
          variant: problem.kind,
          facts: { label, at: problem.at + 1, text: problem.text },
        });
      case 'unknownName':
      case 'unknownFunction':
        return makeFinding({
          ...common,
          id: 'ROW-01',
          variant: problem.kind,
          facts: { label, at: problem.at + 1, text: problem.name },
        });
      default:
        return problem satisfies never;
    }
  });
}

/**
 * Cells that came out as an error as findings, the first of each row; rows that only pass an error on are left
 * out where the row it began in is told.
 *
 * @returns ROW-03
 */
export function faultFindings(faults: readonly GridFault[], ownRows: readonly OwnRow[]): readonly Finding[] {
  const rows = everyRow(ownRows);
  const faulty = new Set(faults.map(({ rowId }) => rowId));
  const origins = faults.filter(({ rowId }) => {
    const formula = rows.get(rowId)?.formula ?? '';
    return ![...faulty].some((other) => other !== rowId && new RegExp(`\\b${other}\\b`).test(formula));
  });
  const once = [...new Map(origins.map((fault) => [fault.rowId, fault])).values()];
  return once.map((fault) =>
    makeFinding({
      id: 'ROW-03',
      severity: 'stop',
      waivable: false,
      where: { document: 'job', path: [] },
      found: fault.error,
      facts: {
        label: rows.get(fault.rowId)?.label ?? fault.rowId,
        error: fault.error,
      },
    }),
  );
}

/**
 * Own rows that take money off instead of adding it. A discount may be meant so; a job that costs nothing or less
 * is not.
 *
 * @returns ROW-03, a caution for each such row, a stop where nothing is left of the full cost
 */
export function negativeRowFindings(sheet: CostSheet, ownRows: readonly OwnRow[]): readonly Finding[] {
  const nothingLeft = wholeJob(sheet, 'fullCost') <= 0;
  return ownRows.flatMap((row): readonly Finding[] => {
    const amount = wholeJob(sheet, row.id);
    if (amount >= 0) return [];
    return [
      makeFinding({
        id: 'ROW-03',
        severity: nothingLeft ? 'stop' : 'caution',
        variant: nothingLeft ? 'nothingLeft' : 'negative',
        waivable: false,
        where: { document: 'job', path: [] },
        found: { value: amount, unit: 'money' },
        limit: { value: 0, unit: 'money' },
        facts: { label: row.label, amount: -amount },
      }),
    ];
  });
}

function labelsOf(ids: readonly string[], ownRows: readonly OwnRow[]): readonly string[] {
  const rows = everyRow(ownRows);
  return ids.map((id) => rows.get(id)?.label ?? id);
}

const everyRow = (ownRows: readonly OwnRow[]) =>
  expandRows({ placements: MOST_PLACEMENTS, presses: 1, ownRows }).byId;
