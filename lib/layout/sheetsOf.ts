import type { PackedSheets } from '@/shared/packedSheets';
import { apartSheets, lengthOf, type PlannedPiece, type PlannedSheet, plannedPiece } from './apartSheets';
import type { LaidOutPrint } from './laidOutPrint';
import type { LaidOutJob } from './layOutJob';
import { stripCuts } from './stripCuts';

/** @returns the sheets of a job in the order they are printed, equal ones counted together, shared ones first. */
export const sheetsOf = ({ prints, shared, job }: LaidOutJob): readonly PlannedSheet[] =>
  drawnSheets(prints, shared, rollOf(job));

/**
 * The sheets of prints as they lie.
 *
 * @param shared by the places of the prints; null where none is shared
 * @param roll undefined for cut sheets
 */
export function drawnSheets(
  prints: readonly LaidOutPrint[],
  shared: PackedSheets | null,
  roll: RollEdges | undefined,
): readonly PlannedSheet[] {
  const together = (shared?.sheets ?? []).map(({ pieces }) =>
    pieces.flatMap(({ id, ...piece }) => {
      const print = prints[Number(id)];
      return print === undefined ? [] : [plannedPiece(print, piece)];
    }),
  );
  return [...counted(together, roll), ...apartSheets(prints)];
}

interface RollEdges {
  readonly marginMm: number;
  readonly gutterMm: number;
}

const rollOf = ({ sheet, printer, workshop }: LaidOutJob['job']): RollEdges | undefined =>
  sheet.form === 'roll' ? { marginMm: printer.marginMm, gutterMm: workshop.policy.gutterMm } : undefined;

/** Equal sheets together, where the first of them stands. */
function counted(
  sheets: readonly (readonly PlannedPiece[])[],
  roll: RollEdges | undefined,
): readonly PlannedSheet[] {
  const found = new Map<string, readonly (readonly PlannedPiece[])[]>();
  for (const pieces of sheets) {
    const key = JSON.stringify(pieces);
    found.set(key, [...(found.get(key) ?? []), pieces]);
  }
  return [...found.values()].map((same) => {
    const pieces = same[0] ?? [];
    const cutsMm = roll === undefined ? [] : stripCuts(pieces, roll.gutterMm);
    return { count: same.length, pieces, spare: 0, lengthMm: lengthOf(pieces, roll), cutsMm };
  });
}
