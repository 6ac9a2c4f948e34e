import { isSpeck } from '@/lib/check/isSpeck';
import { resizeFix } from '@/lib/check/printFix';
import type { Rule } from '@/lib/check/rule';
import { makeFinding } from '@/lib/findings/makeFinding';
import type { ResolvedJob } from '@/lib/job/checkedJob';
import { type PlacementPlace, type PrintPlace, placementPlaces } from '@/lib/job/places';
import type { SizeMm } from '@/lib/job/tidyLength';
import { nextSize } from '@/lib/layout/nextSize';
import { rollQuestion } from '@/lib/layout/rollQuestion';
import { sheetQuestion } from '@/lib/layout/sheetQuestion';
import { piecesPerSheet } from '@/lib/packing/equal/piecesPerSheet';
import { rollStrips } from '@/lib/packing/roll/rollStrips';
import type { Finding } from '@/shared/finding';
import { thresholds } from '@/shared/tables/thresholds';
import { inset } from './sheetShare';

/** LAY-07: even a full sheet stays more than half empty. Prints that share sheets are not judged one by one. */
const sheetFill: Rule = ({ resolved }) =>
  resolved.job.gang === 'together'
    ? []
    : placementPlaces(resolved).flatMap((place) =>
        place.prints.flatMap((print) => judgeFill(resolved, place, print)),
      );

function judgeFill(job: ResolvedJob, place: PlacementPlace, printPlace: PrintPlace): readonly Finding[] {
  const { print, printIndex } = printPlace;
  if (isSpeck(print)) return [];
  const count = placesFor(job, print);
  const least = thresholds.sheetFill;
  const fill = job.sheet.form === 'roll' ? rollFill(job, print) : fillOf(job, print, count);
  if (count === 0 || fill >= least.value - 1e-9) return [];
  const next = nextSize(job, print);
  const better = next !== null && fillOf(job, next.to, next.perSheet) >= least.value ? next : null;
  const full = { placement: place.placed.placement.name, sheet: job.sheet.name, empty: 1 - fill };
  return [
    makeFinding({
      id: 'LAY-07',
      severity: 'note',
      ...(better === null
        ? ({ variant: 'empty', facts: full } as const)
        : ({
            variant: 'smaller',
            facts: { ...full, perSheet: count, betterPerSheet: better.perSheet, ...better.to },
          } as const)),
      where: place.where('prints', printIndex),
      found: { value: fill, unit: 'share' },
      limit: { value: least.value, unit: 'share' },
      fix: better === null ? null : resizeFix(place, printIndex, better.to),
    }),
  ];
}

/** Prints on a sheet, or in a row across a roll. */
const placesFor = (job: ResolvedJob, print: SizeMm): number =>
  job.sheet.form === 'roll'
    ? (rollStrips(rollQuestion(job, print))?.across ?? 0)
    : piecesPerSheet(sheetQuestion(job, print)).count;

/** Share of the reach across a roll that a row covers. */
function rollFill(job: ResolvedJob, print: SizeMm): number {
  const strips = rollStrips(rollQuestion(job, print));
  if (strips === null) return 0;
  const wide = strips.turned ? print.heightMm : print.widthMm;
  return (strips.across * wide) / (job.sheet.widthMm - 2 * job.printer.marginMm);
}

/** Share of the paper the printer reaches that full sheets cover. */
function fillOf({ sheet, printer }: ResolvedJob, { widthMm, heightMm }: SizeMm, count: number): number {
  const room = inset(sheet, printer.marginMm);
  return (count * widthMm * heightMm) / (room.widthMm * room.heightMm);
}

/** LAY-14: what is cut from one sheet goes to presses that are set alike, and lies the same way round. */
const mixedSheets: Rule = ({ resolved }) => {
  if (resolved.job.gang !== 'together') return [];
  const [first, ...others] = placementPlaces(resolved);
  const other = others.find(({ placed }) => first !== undefined && differs(first, placed.placement));
  if (first === undefined || other === undefined) return [];
  const { placement } = other.placed;
  return [
    makeFinding({
      id: 'LAY-14',
      severity: 'caution',
      variant: placement.mirror === first.placed.placement.mirror ? 'recipe' : 'mirror',
      where: { document: 'job', path: ['gang'] },
      facts: { placement: first.placed.placement.name, other: placement.name },
      fix: {
        label: 'printsApart',
        facts: {},
        changes: [{ document: 'job', path: ['gang'], value: 'apart' }],
      },
    }),
  ];
};

/** What the paper knows nothing of, as a pillow under the piece, may differ. */
function differs({ placed }: PlacementPlace, other: PlacementPlace['placed']['placement']): boolean {
  const one = placed.placement;
  return (
    one.mirror !== other.mirror ||
    one.recipe.temperature.value !== other.recipe.temperature.value ||
    one.recipe.temperature.unit !== other.recipe.temperature.unit ||
    one.recipe.dwellSeconds !== other.recipe.dwellSeconds ||
    one.recipe.pressure !== other.recipe.pressure
  );
}

export const sheetUseRules: readonly Rule[] = [sheetFill, mixedSheets];
