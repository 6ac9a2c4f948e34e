import { blanksTaken } from '@/lib/grid/blanksTaken';
import { type CostSheet, wholeJob } from '@/lib/grid/costSheet';
import { expectedSheets } from '@/lib/grid/expectedSheets';
import { rollUsed } from '@/lib/grid/rollUsed';
import { printOfSize } from '@/lib/job/printOfSize';
import { type LaidOut, type SpareStack, spareStacks, stackFinder } from '@/lib/job/spareStacks';
import type { LaidOutPrint } from '@/lib/layout/layOutJob';
import type { Placement } from '@/shared/schemas/job';
import type { JobInput } from '@/shared/schemas/request';

/** A size of a line as it goes to the press. */
interface SheetSize {
  readonly size: string;
  readonly wanted: number;
  /** Blanks to lay out, spares among them; of what several lines share, those the line is expected to need. */
  readonly take: number;
  /** Of the blank and size, whichever line takes them. */
  readonly spares: number;
  /** Several lines are made of the blank. */
  readonly isShared: boolean;
}

interface SheetLine {
  readonly lineId: string;
  readonly name: string;
  readonly blankId: string;
  readonly sizes: readonly SheetSize[];
  readonly take: number;
  readonly spare: number;
}

/** A placement in press order, with the prints of it that are made. */
export interface SheetPlacement {
  readonly lineId: string;
  readonly placement: Placement;
  readonly prints: readonly LaidOutPrint[];
  readonly sizes: readonly SheetSize[];
}

/** What the bench needs to know of a job. */
export interface JobSheetFacts {
  readonly pieces: number;
  readonly lines: readonly SheetLine[];
  /** Blanks and sizes of which several lines share the spares. */
  readonly shared: readonly SpareStack<LaidOut & { readonly blankName: string }>[];
  /** How likely no size runs out of blanks. */
  readonly covered: number;
  readonly take: number;
  readonly spare: number;
  readonly placements: readonly SheetPlacement[];
  /** Sheets to print, spoiled ones and tests among them; strips of a roll are counted by their area. */
  readonly sheets: number;
  /** Length of roll to print, spoiled ones and tests in it; null for cut sheets. */
  readonly rollMm: number | null;
  /** Of them for the good pieces. */
  readonly goodSheets: number;
  readonly tests: number;
  readonly attendedMinutes: number;
  readonly unattendedMinutes: number;
}

/**
 * @param layout as it was laid out for the sums
 * @returns what a job's sheet for the bench says, in the order of the work
 */
export function jobSheetFacts(
  { job, blanks, workshop }: JobInput,
  { layout, costSheet: sheet }: { readonly layout: readonly LaidOutPrint[]; readonly costSheet: CostSheet },
): JobSheetFacts {
  const blankOf = (lineId: string) => {
    const blankId = job.lines.find(({ id }) => id === lineId)?.blankId ?? lineId;
    const blank = blanks[blankId];
    return { blankId, blankName: blank?.name ?? blankId, isBrought: blank?.suppliedBy === 'customer' };
  };
  const { take, covered } = blanksTaken(sheet, (lineId) => {
    const { blankId, isBrought } = blankOf(lineId);
    return isBrought ? null : blankId;
  });
  const laid = sheet.cases.map(({ lineId, size, quantity }, index) => ({
    ...{ jobId: '', lineId, size, wanted: quantity, take: take[index] ?? quantity },
    ...blankOf(lineId),
  }));
  const stackOf = stackFinder(laid);
  const lines = job.lines.flatMap(({ id, name, blankId }): readonly SheetLine[] => {
    const sizes = laid.flatMap((one): readonly SheetSize[] => {
      const { spares = 0, isShared = false } = stackOf(one) ?? {};
      const { size, wanted, take: taken } = one;
      return one.lineId === id ? [{ size, wanted, take: taken, spares, isShared }] : [];
    });
    if (sizes.length === 0) return [];
    const taken = sum(sizes.map((size) => size.take));
    return [
      {
        lineId: id,
        name,
        blankId,
        sizes,
        take: taken,
        spare: taken - sum(sizes.map(({ wanted }) => wanted)),
      },
    ];
  });
  const placements = job.lines.flatMap(({ id, placements: all }) =>
    all.flatMap((placement): readonly SheetPlacement[] => {
      const prints = layout.filter((print) => print.lineId === id && print.placementId === placement.id);
      const sizes = lines.find(({ lineId }) => lineId === id)?.sizes ?? [];
      const pressed = sizes.filter(({ size }) => printOfSize(placement, size) !== null);
      return prints.length === 0 ? [] : [{ lineId: id, placement, prints, sizes: pressed }];
    }),
  );
  const paper = workshop.sheets.find(({ id }) => id === job.sheetId);
  return {
    pieces: wholeJob(sheet, 'goodPieces'),
    lines,
    shared: spareStacks(laid).filter(({ isShared }) => isShared),
    covered,
    take: sum(lines.map((line) => line.take)),
    spare: sum(lines.map((line) => line.spare)),
    placements,
    rollMm: paper === undefined ? null : (rollUsed(sheet, paper)?.lengthMm ?? null),
    sheets: expectedSheets(sheet),
    goodSheets: wholeUp(sum(layout.map((print) => print.sheets * print.sheetWorth))),
    tests: sum(placements.map(({ placement }) => placement.testPresses)),
    attendedMinutes: wholeJob(sheet, 'attended'),
    unattendedMinutes: wholeJob(sheet, 'unattended'),
  };
}

// Helpers

const sum = (values: readonly number[]): number => values.reduce((all, value) => all + value, 0);

/** Whole ones, where a sum that is whole but for the last digit is that whole. */
const wholeUp = (value: number): number => Math.ceil(value - 1e-9);
