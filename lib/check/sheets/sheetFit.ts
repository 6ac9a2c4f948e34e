import { isSpeck } from '@/lib/check/isSpeck';
import { shrinkFix } from '@/lib/check/printFix';
import type { Rule } from '@/lib/check/rule';
import { makeFinding } from '@/lib/findings/makeFinding';
import type { ResolvedJob } from '@/lib/job/checkedJob';
import type { PlacementPlace, PrintPlace } from '@/lib/job/places';
import { placementPlaces } from '@/lib/job/places';
import { scaledSize } from '@/lib/job/tidyLength';
import type { Finding } from '@/shared/finding';
import { thresholds } from '@/shared/tables/thresholds';
import { fitsWithin } from '@/shared/units';
import { fits, inset, sheetShare, turned } from './sheetShare';
import { taped } from './taped';

/** LAY-01 to LAY-03, and LAY-10 on a roll: whether a print goes on the sheet, and which way. */
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
  const named = { sheet: sheet.name, placement: place.placed.placement.name };
  const size = { widthMm: print.widthMm, heightMm: print.heightMm };
  const smaller = {
    ...named,
    ...size,
    largestWidthMm: largest.widthMm,
    largestHeightMm: largest.heightMm,
  };
  const outOfReach = {
    ...smaller,
    printableWidthMm: printable.widthMm,
    printableHeightMm: printable.heightMm,
  };
  const draft = {
    where: place.where('prints', printIndex),
    found: `${print.widthMm} × ${print.heightMm} mm`,
    limit: `${printable.widthMm} × ${printable.heightMm} mm`,
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
        facts: { placement: named.placement, ...size, leastMm: least },
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
          ...(isNothingLeft || factor <= 0
            ? ({ variant: 'nothing', facts: named, fix: null } as const)
            : { facts: outOfReach }),
        }),
      ];
    }
    if (!withoutBorders) {
      return [
        makeFinding({
          ...draft,
          id: 'LAY-01',
          severity: 'stop',
          ...(factor <= 0
            ? ({ variant: 'nothing', facts: { ...named, ...size }, fix: null } as const)
            : { facts: outOfReach }),
        }),
      ];
    }
    if (!printer.borderless) {
      // No sheet can be printed behind this stop, so no reason passes it.
      return [
        makeFinding({
          ...draft,
          id: 'LAY-03',
          severity: 'stop',
          variant: 'unsupported',
          waivable: false,
          facts: smaller,
        }),
      ];
    }
    return [
      makeFinding({ ...draft, id: 'LAY-03', severity: 'caution', variant: 'supported', facts: smaller }),
    ];
  }
  return upright
    ? []
    : [makeFinding({ ...draft, id: 'LAY-02', severity: 'note', facts: { ...named, ...size }, fix: null })];
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

export const sheetFitRules: readonly Rule[] = [fit, gutter];
