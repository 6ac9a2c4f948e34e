import { type CostSheet, caseValue } from '@/lib/grid/costSheet';

/** Planned tests of one print that one size bears. */
interface TestShare {
  /** Place of the print in its line, from 1. */
  readonly slot: string;
  readonly lineId: string;
  /** May be a fraction: all pieces of the line bear its tests. */
  readonly presses: number;
  /** Each on a sheet of its own; a strip of a roll counts by its area. */
  readonly sheets: number;
}

/** @returns the planned tests of a job, shared as its sums share them */
export function testPresses(sheet: CostSheet): readonly TestShare[] {
  const slots = Object.keys(sheet.values).flatMap((row) => /^testsShared_(\d+)$/.exec(row)?.[1] ?? []);
  return sheet.cases.flatMap(({ lineId, quantity }, index) =>
    slots.map((slot) => {
      const presses = quantity * caseValue(sheet, `testsShared_${slot}`, index);
      const worth = sheet.inputs.cases[index]?.[`sheetWorth_${slot}`]?.value ?? 1;
      return { slot, lineId, presses, sheets: presses * worth };
    }),
  );
}
