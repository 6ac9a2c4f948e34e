import type { ResolvedJob, ResolvedLine, ResolvedPlacement, ResolvedSize } from '@/lib/job/checkedJob';
import { coverageOfPrint } from '@/lib/job/coverageOfPrint';
import { printOfSize } from '@/lib/job/printOfSize';
import { groupAt } from '@/lib/layout/groupAt';
import type { LaidOutPrint } from '@/lib/layout/layOutJob';
import { given, givenOr, typed } from './fillJob';
import type { GridColumn, GridInput } from './gridInput';

const counted = (value: number, about?: string): GridInput => ({
  value,
  origin: 'counted',
  ...(about === undefined ? {} : { about }),
});

/** Values of a placement that this line does not have: they take no part in any sum. */
const idle: GridColumn = Object.fromEntries(
  Object.entries({
    used: 0,
    scrap: 0,
    replaceAlone: 1,
    tests: 0,
    handMinutes: 0,
    aloneMinutes: 0,
    hotMinutes: 0,
    prepMinutes: 0,
    newDesign: 0,
    pressPowerKw: 0,
    holdingShare: 0,
    pressPrice: 0,
    pressResale: 0,
    pressLife: 1,
    pressLifeYears: 0,
    pressesPerYear: 0,
    partsPrice: 0,
    partsInterval: 1,
    protectivePaper: 0,
    tape: 0,
  }).map(([name, value]) => [name, counted(value, 'not used by this line')]),
);

/** @returns the values that stand once for a line, by row id, for `slots` placements. */
export function fillLine(line: ResolvedLine, slots: number): GridColumn {
  const placements = Array.from({ length: slots }, (_, index) => {
    const resolved = line.placements[index];
    return suffixed(resolved === undefined ? idle : fillPlacement(line, resolved, index), index);
  });
  return Object.assign(
    {
      blankFault: given(line.blankFault),
      finishMinutes: given(line.finishMinutes),
      packagingPerPiece:
        line.packaging === null
          ? counted(0, 'nothing is packed by the piece')
          : given(line.packaging.perPiece),
    },
    ...placements,
  ) as GridColumn;
}

/**
 * @param batch good pieces of this line in the batch, above 0; may be fractional in a planning curve
 * @param quantity pieces of this size that the whole-job column counts
 * @returns the values of one case, by row id
 */
export function fillCase(
  job: ResolvedJob,
  prints: readonly LaidOutPrint[],
  line: ResolvedLine,
  size: ResolvedSize,
  batch: number,
  quantity: number,
  slots: number,
): GridColumn {
  const linePieces = piecesOf(line);
  const jobPieces = job.lines.reduce((sum, other) => sum + (other === line ? batch : piecesOf(other)), 0);
  const placements = Array.from({ length: slots }, (_, index): GridColumn => {
    const resolved = line.placements[index];
    if (resolved === undefined) {
      return suffixed(
        {
          group: counted(1),
          ups: counted(1),
          sheetWorth: counted(1),
          areaM2: counted(0),
          coverage: counted(0, 'not used by this line'),
          designPieces: counted(1),
        },
        index,
      );
    }
    const print = printFor(prints, line, resolved, size.size);
    return suffixed(
      {
        group: counted(groupAt(print, batch, linePieces)),
        ups: counted(print.perSheet, 'from the layout'),
        sheetWorth: counted(print.sheetWorth, 'by area, a letter sheet is 1'),
        areaM2: { ...counted((print.widthMm * print.heightMm) / 1e6), about: 'width × height of the print' },
        coverage: coverageOf(resolved, print),
        designPieces: counted(piecesWith(job, resolved.placement.artworkId, line, batch)),
      },
      index,
    );
  });
  return Object.assign(
    {
      quantity: counted(quantity),
      pieces: counted(batch),
      jobPieces: counted(jobPieces),
      blankPrice: { ...given(size.blankPrice), about: blankOf(line, size) },
      askedPrice: typed(size.askedPrice ?? 0),
      askedStart: typed(size.askedStart ?? 0),
    },
    ...placements,
  ) as GridColumn;
}

const blankOf = ({ blank }: ResolvedLine, { size }: ResolvedSize): string =>
  `${blank.name}, ${size}${blank.suppliedBy === 'customer' ? ', brought by the customer' : ''}`;

/** @returns good pieces of a line over all its sizes. */
export const piecesOf = (line: ResolvedLine): number =>
  line.sizes.reduce((sum, { quantity }) => sum + quantity, 0);

function fillPlacement(line: ResolvedLine, resolved: ResolvedPlacement, index: number): GridColumn {
  const { placement, press } = resolved;
  const first =
    line.placements.findIndex((other) => other.placement.artworkId === placement.artworkId) === index;
  return {
    used: counted(1, 'this line has it'),
    scrap: given(resolved.scrap),
    replaceAlone: typed(placement.replacements === 'alone' ? 1 : 0),
    tests: typed(placement.testPresses),
    handMinutes: given(resolved.handMinutes),
    aloneMinutes: given(resolved.aloneMinutes),
    hotMinutes: given(resolved.hotMinutes),
    prepMinutes: { ...given(resolved.prepMinutes), about: resolved.artwork.name },
    newDesign: resolved.isArtReady
      ? counted(0, 'prepared for an earlier order')
      : counted(first ? 1 : 0, 'once for each artwork of the line'),
    pressPowerKw: { ...given(press.powerKw), about: press.name },
    holdingShare: given(press.holdingShare),
    pressPrice: given(press.price),
    pressResale: given(press.resale),
    pressLife: given(press.lifePresses),
    pressLifeYears: givenOr(press.lifeYears, 0),
    pressesPerYear: givenOr(press.pressesPerYear, 0),
    partsPrice: givenOr(press.partsPrice, 0),
    partsInterval: givenOr(press.partsInterval, 1),
    protectivePaper: given(press.protectivePaper),
    tape: given(press.tape),
  };
}

/** Ink over the box of one print: of a picture that was read, as it lies in it. */
function coverageOf(resolved: ResolvedPlacement, print: LaidOutPrint): GridInput {
  const { artwork, totalCoverage } = resolved;
  const value = coverageOfPrint(resolved, print);
  if (totalCoverage.origin !== 'read') return { value, origin: totalCoverage.origin, about: artwork.name };
  const black = Number((totalCoverage.blackShare * 100).toFixed(1));
  return counted(
    value,
    `read from the file “${artwork.picture?.fileName ?? artwork.name}”, ${black} % of its grey printed with black`,
  );
}

/** @returns how the print that a size of a line gets is laid out. */
export function printFor(
  prints: readonly LaidOutPrint[],
  line: ResolvedLine,
  { placement }: ResolvedPlacement,
  size: string,
): LaidOutPrint {
  const index = printOfSize(placement, size);
  const found = prints.find(
    (print) => print.lineId === line.line.id && print.placementId === placement.id && print.print === index,
  );
  if (found === undefined) throw new RangeError(`no layout for ${placement.name} in size ${size}`);
  return found;
}

function piecesWith(job: ResolvedJob, artworkId: string, line: ResolvedLine, batch: number): number {
  return job.lines
    .filter((other) => other.placements.some(({ placement }) => placement.artworkId === artworkId))
    .reduce((sum, other) => sum + (other === line ? batch : piecesOf(other)), 0);
}

function suffixed(column: GridColumn, index: number): GridColumn {
  return Object.fromEntries(Object.entries(column).map(([name, input]) => [`${name}_${index + 1}`, input]));
}
