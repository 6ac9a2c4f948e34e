import { apartSheets, lengthOf, type PlannedPiece, type PlannedSheet, plannedPiece } from './apartSheets';
import type { LaidOutJob } from './layOutJob';
import { stripCuts } from './stripCuts';

/** @returns the sheets of a job in the order they are printed, equal ones counted together, shared ones first. */
export function sheetsOf({ prints, shared, job }: LaidOutJob): readonly PlannedSheet[] {
  const together = (shared?.sheets ?? []).map(({ pieces }) =>
    pieces.flatMap(({ id, ...piece }) => {
      const print = prints[Number(id)];
      return print === undefined ? [] : [plannedPiece(print, piece)];
    }),
  );
  const roll =
    job.sheet.form === 'roll'
      ? { marginMm: job.printer.marginMm, gutterMm: job.workshop.policy.gutterMm }
      : undefined;
  return [...counted(together, roll), ...apartSheets(prints)];
}

/** Equal sheets together, where the first of them stands. */
function counted(
  sheets: readonly (readonly PlannedPiece[])[],
  roll: { readonly marginMm: number; readonly gutterMm: number } | undefined,
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
