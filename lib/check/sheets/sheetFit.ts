import { isSpeck } from '@/lib/check/isSpeck';
import { shrinkFix } from '@/lib/check/printFix';
import type { Rule } from '@/lib/check/rule';
import { makeFinding } from '@/lib/findings/makeFinding';
import type { ResolvedJob } from '@/lib/job/checkedJob';
import type { PlacementPlace, PrintPlace } from '@/lib/job/places';
import { placementPlaces } from '@/lib/job/places';
import type { SizeMm } from '@/lib/job/tidyLength';
import { scaledSize } from '@/lib/job/tidyLength';
import type { Finding } from '@/shared/finding';
import { thresholds } from '@/shared/tables/thresholds';
import { fitsWithin } from '@/shared/units';
import { cleanEdge } from './cleanEdge';
import { fits, inset, sheetShare, turned } from './sheetShare';

/** LAY-01 to LAY-04, and LAY-10 on a roll: whether a print goes on the sheet, which way, and with room for tape. */
const fit: Rule = ({ resolved }) =>
  placementPlaces(resolved).flatMap((place) =>
    place.prints.flatMap((print) => judgeFit(resolved, place, print)),
  );

function judgeFit(job: ResolvedJob, place: PlacementPlace, printPlace: PrintPlace): readonly Finding[] {
  const { sheet, printer, workshop } = job;
  const { print, printIndex } = printPlace;
  const printable = inset(sheet, printer.marginMm);
  const factor = taped(job, print);
  const largest = scaledSize(print, factor, workshop.units.length);
  const draft = {
    where: place.where('prints', printIndex),
    found: `${print.widthMm} × ${print.heightMm} mm`,
    limit: `${printable.widthMm} × ${printable.heightMm} mm`,
    facts: {
      sheet: sheet.name,
      placement: place.placed.placement.name,
      widthMm: print.widthMm,
      heightMm: print.heightMm,
      printableWidthMm: printable.widthMm,
      printableHeightMm: printable.heightMm,
      largestWidthMm: largest.widthMm,
      largestHeightMm: largest.heightMm,
    },
    fix: factor < 1 ? shrinkFix(place, printPlace, factor, workshop.units.length) : null,
  };
  const least = thresholds.leastPrint.value;
  if (isSpeck(print)) {
    return [
      makeFinding({
        ...draft,
        id: 'LAY-01',
        severity: 'stop',
        variant: 'speck',
        limit: { value: least, unit: 'mm' },
        facts: { ...draft.facts, leastMm: least },
        fix: null,
      }),
    ];
  }
  const upright = fits(print, printable);
  if (!upright && !fits(turned(print), printable)) {
    const withoutBorders = fits(print, sheet) || fits(turned(print), sheet);
    if (!withoutBorders && sheet.form === 'roll') {
      const isNothingLeft = printable.widthMm <= 0 || printable.heightMm <= 0;
      return [
        makeFinding({
          ...draft,
          id: 'LAY-10',
          severity: 'stop',
          ...(isNothingLeft || factor <= 0 ? { variant: 'nothing', fix: null } : {}),
        }),
      ];
    }
    if (!withoutBorders) return [makeFinding({ ...draft, id: 'LAY-01', severity: 'stop' })];
    if (!printer.borderless) {
      // No sheet can be printed behind this stop, so no reason passes it.
      return [
        makeFinding({ ...draft, id: 'LAY-03', severity: 'stop', variant: 'unsupported', waivable: false }),
      ];
    }
    return [
      makeFinding({ ...draft, id: 'LAY-03', severity: 'caution', variant: 'supported' }),
      ...judgeTape(job, place, printPlace),
    ];
  }
  return [
    ...(upright ? [] : [makeFinding({ ...draft, id: 'LAY-02', severity: 'note', fix: null })]),
    ...judgeTape(job, place, printPlace),
  ];
}

/** LAY-04, for prints that go one to a sheet; others are cut apart and judged by their gutter. */
function judgeTape(job: ResolvedJob, place: PlacementPlace, printPlace: PrintPlace): readonly Finding[] {
  const { print, printIndex } = printPlace;
  if (sheetShare(job, print) !== 'alone') return [];
  const margins = [print, turned(print)].flatMap((size) => cleanEdge(job.sheet, size) ?? []);
  const marginMm = Math.max(...margins);
  const wantedMm = tapeMargin(job);
  if (fitsWithin(wantedMm, marginMm)) return [];
  const isBare = !fitsWithin(thresholds.tape.least.value, marginMm);
  const isStop = isBare && place.line.blank.kind === 'garment';
  const factor = taped(job, print);
  return [
    makeFinding({
      id: 'LAY-04',
      severity: isStop ? 'stop' : 'caution',
      variant: isStop ? 'none' : 'narrow',
      where: place.where('prints', printIndex),
      found: { value: marginMm, unit: 'mm' },
      limit: { value: isStop ? thresholds.tape.least.value : wantedMm, unit: 'mm' },
      facts: { placement: place.placed.placement.name, marginMm: Math.max(0, marginMm), wantedMm },
      fix: factor < 1 ? shrinkFix(place, printPlace, factor, job.workshop.units.length) : null,
    }),
  ];
}

/** LAY-06: room for the knife between pieces that are cut apart. One setting of the workshop, told once. */
const gutter: Rule = ({ resolved }) => {
  const { gutterMm } = resolved.workshop.policy;
  const { least, clear } = thresholds.gutter;
  if (fitsWithin(clear.value, gutterMm)) return [];
  const ganged = placementPlaces(resolved).find(({ prints }) =>
    prints.some(({ print }) => sheetShare(resolved, print) === 'shared'),
  );
  if (ganged === undefined) return [];
  const isStop = !fitsWithin(least.value, gutterMm);
  return [
    makeFinding({
      id: 'LAY-06',
      severity: isStop ? 'stop' : 'caution',
      variant: isStop ? 'none' : 'narrow',
      where: { document: 'workshop', path: ['policy', 'gutterMm'] },
      found: { value: gutterMm, unit: 'mm' },
      limit: { value: isStop ? least.value : clear.value, unit: 'mm' },
      facts: { gutterMm, wantedMm: clear.value, placement: ganged.placed.placement.name },
      fix: {
        label: 'setGutter',
        facts: { gutterMm: clear.value },
        changes: [{ document: 'workshop', path: ['policy', 'gutterMm'], value: clear.value }],
      },
    }),
  ];
};

/** The maker may ask for more room for tape than is usual, never for less. */
const tapeMargin = ({ workshop }: ResolvedJob): number =>
  Math.max(thresholds.tape.clear.value, workshop.policy.tapeMarginMm);

/** The factor, at most 1, that makes a print fit with room for tape, either way round. */
function taped(job: ResolvedJob, print: SizeMm): number {
  const room = inset(job.sheet, Math.max(tapeMargin(job), job.printer.marginMm));
  const factor = (size: SizeMm) => Math.min(room.widthMm / size.widthMm, room.heightMm / size.heightMm, 1);
  return Math.max(0, factor(print), factor(turned(print)));
}

export const sheetFitRules: readonly Rule[] = [fit, gutter];
