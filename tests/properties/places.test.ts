import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sheetsFile } from '@/app/_docket/sheets/sheetsFile';
import { checkJob } from '@/lib/check/checkJob';
import { reviewCosts } from '@/lib/check/reviewCosts';
import { costFactsOf } from '@/lib/costing/costFactsOf';
import type { SheetsToPrint } from '@/lib/exports/sheetsToPrint';
import type { PlannedSheet } from '@/lib/layout/apartSheets';
import type { LaidOutJob } from '@/lib/layout/layOutJob';
import { plannedSheets } from '@/lib/layout/plannedSheets';
import type { Finding } from '@/shared/finding';
import type { JobInput } from '@/shared/schemas/request';
import { LENGTH_TOLERANCE_MM } from '@/shared/units';
import { costed, grid, laidOut } from '@/tests/fixtures/costed';
import { type JobShape, randomJob } from '@/tests/fixtures/randomJob';
import { cases, patience } from '@/tests/tools/cases';

const shapes: readonly JobShape[] = [
  { lines: 1, placements: 1, presses: 1, own: 'none' },
  { lines: 1, placements: 3, presses: 1, own: 'none' },
  { lines: 2, placements: 2, presses: 1, own: 'none' },
];

/** So much room is asked for that every print with a sheet for itself is told of, with what it has. */
const anyRoom = (input: JobInput, gang: 'apart' | 'together'): JobInput => ({
  ...input,
  workshop: { ...input.workshop, policy: { ...input.workshop.policy, tapeMarginMm: 5000 } },
  job: { ...input.job, gang },
});

const random = fc
  .tuple(fc.oneof(...shapes.map(randomJob)), fc.constantFrom('apart', 'together'))
  .map(([input, gang]) => anyRoom(input, gang));

interface Written {
  readonly input: JobInput;
  readonly layout: LaidOutJob;
  readonly sheets: readonly PlannedSheet[];
  readonly file: SheetsToPrint;
}

function written(input: JobInput): Written {
  const layout = laidOut(input);
  const { sheets } = plannedSheets(layout);
  const [paper] = input.workshop.sheets;
  if (paper === undefined) throw new ReferenceError('the workshop has no sheet');
  const file = sheetsFile({
    input,
    paper,
    sheets,
    pages: 'oneOfEach',
    withLine: false,
  });
  return { input, layout, sheets, file };
}

/** Names of placements are their ids; the size tells which print of one it is. */
const keyOf = (name: string, widthMm: number, heightMm: number): string => `${name} ${widthMm} ${heightMm}`;

/** The file says nothing but where pictures lie; whose they are, the plan says piece by piece in the same order. */
const placementOn = (sheets: Written['sheets'], sheet: number, place: number): string =>
  sheets[sheet]?.pieces[place]?.placementId ?? '';

/** The least distance of each print from the edge of its page, by the file alone; of a roll, across it. */
function clearances({ file, layout, sheets }: Written): ReadonlyMap<string, number> {
  const isRoll = layout.job.sheet.form === 'roll';
  const least = new Map<string, number>();
  for (const [sheet, { heightMm, pieces }] of file.sheets.entries())
    for (const [place, piece] of pieces.entries()) {
      const name = placementOn(sheets, sheet, place);
      const key = piece.turned
        ? keyOf(name, piece.heightMm, piece.widthMm)
        : keyOf(name, piece.widthMm, piece.heightMm);
      const across = [piece.xMm, file.widthMm - piece.xMm - piece.widthMm];
      const down = isRoll ? [] : [piece.yMm, heightMm - piece.yMm - piece.heightMm];
      least.set(key, Math.min(least.get(key) ?? Number.POSITIVE_INFINITY, ...across, ...down));
    }
  return least;
}

function judged({ input, layout }: Written): ReadonlyMap<string, number> {
  const findings: readonly Finding[] =
    input.job.gang === 'together'
      ? reviewCosts(layout.job, costFactsOf(costed(input), grid))
      : checkJob(input).findings;
  return new Map(
    findings.flatMap(({ id, where, found }) => {
      if (id !== 'LAY-04' || typeof found !== 'object' || found === null) return [];
      const line = input.job.lines.find((one) => one.id === where.lineId);
      const placement = line?.placements.find((one) => one.id === where.placementId);
      const print = placement?.prints[Number(where.path.at(-1))];
      if (placement === undefined || print === undefined) return [];
      return [[keyOf(placement.name, print.widthMm, print.heightMm), found.value] as const];
    }),
  );
}

const PATIENCE = { timeout: patience(120_000) };

describe('where a print lies is where it is judged', () => {
  it('has the clearance in the check that it has in the file', PATIENCE, () => {
    let told = 0;
    fc.assert(
      fc.property(random, (input) => {
        const one = written(input);
        const inFile = clearances(one);
        const inCheck = judged(one);
        told += inCheck.size;
        for (const [key, mm] of inCheck) expect(mm).toBeCloseTo(inFile.get(key) ?? Number.NaN, 6);
        for (const [key, mm] of inFile) {
          if (inCheck.has(key)) continue;
          // Nothing is said only of pieces that are cut apart, and they have an eighth of an inch.
          expect(mm).toBeGreaterThanOrEqual(3.175 - LENGTH_TOLERANCE_MM);
          const places = one.layout.prints.flatMap((print) =>
            keyOf(print.placementId, print.widthMm, print.heightMm) === key ? [print.placed.length] : [],
          );
          const isCut = one.sheets.some(
            ({ pieces }) =>
              pieces.length > 1 && pieces.some(({ placementId }) => key.startsWith(`${placementId} `)),
          );
          expect(isCut || places.some((count) => count > 1)).toBe(true);
        }
      }),
      cases(100),
    );
    expect(told).toBeGreaterThan(0);
  });

  it('lies in the middle of its page and within the printer’s reach', PATIENCE, () => {
    fc.assert(
      fc.property(random, (input) => {
        const { layout, sheets, file } = written(input);
        const { sheet, printer } = layout.job;
        file.sheets.forEach(({ pieces, heightMm }, index) => {
          const left = Math.min(...pieces.map(({ xMm }) => xMm));
          const top = Math.min(...pieces.map(({ yMm }) => yMm));
          const right = file.widthMm - Math.max(...pieces.map(({ xMm, widthMm }) => xMm + widthMm));
          const bottom = heightMm - Math.max(...pieces.map(({ yMm, heightMm: high }) => yMm + high));
          const reach = printer.marginMm - LENGTH_TOLERANCE_MM;
          expect(Math.min(left, right, top, bottom)).toBeGreaterThanOrEqual(reach);
          const before = sheets[index - 1];
          const places = new Set(before?.pieces.map(placeOf));
          const isRest =
            before !== undefined &&
            before.pieces.length > pieces.length &&
            (sheets[index]?.pieces ?? []).every((piece) => places.has(placeOf(piece)));
          if (isRest) return;
          expect(left).toBeCloseTo(right, 6);
          expect(top).toBeCloseTo(bottom, 6);
          if (sheet.form === 'roll') expect(top).toBeCloseTo(printer.marginMm, 4);
        });
      }),
      cases(100),
    );
  });
});

const placeOf = ({ lineId, placementId, print, xMm, yMm, turned }: PlannedSheet['pieces'][number]): string =>
  JSON.stringify([lineId, placementId, print, xMm, yMm, turned]);
