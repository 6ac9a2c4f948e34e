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
import type { Substrate } from '@/shared/schemas/blank';
import { thresholds } from '@/shared/tables/thresholds';
import { fitsWithin } from '@/shared/units';
import { cleanEdge } from './cleanEdge';
import { inset, sheetShare, turned } from './sheetShare';

/** Light or textured knits, in which the edge of the paper presses a line. */
const marked: readonly Substrate[] = ['polyesterShirt', 'performancePolyester', 'blend65'];

/** LAY-05: the edge of the paper lies close to the picture on cloth that keeps a crease. */
const paperLine: Rule = ({ resolved }) =>
  placementPlaces(resolved).flatMap((place): readonly Finding[] => {
    const { placement } = place.placed;
    if (!marked.includes(place.line.blank.substrate) || placement.recipe.reliefFromRaisedParts) return [];
    const limit = thresholds.paperLine;
    const edges = place.prints
      .map((print) => ({ print, edgeMm: paperEdge(resolved, print.print) }))
      .filter(({ edgeMm }) => edgeMm !== null && !fitsWithin(limit.value, edgeMm))
      .toSorted((a, b) => (a.edgeMm ?? 0) - (b.edgeMm ?? 0));
    const [closest] = edges;
    if (closest === undefined) return [];
    const edgeMm = closest.edgeMm ?? 0;
    return [
      makeFinding({
        id: 'LAY-05',
        severity: 'note',
        where: place.where('prints', closest.print.printIndex),
        found: { value: edgeMm, unit: 'mm' },
        limit: { value: limit.value, unit: 'mm' },
        facts: { placement: placement.name, blank: place.line.blank.name, edgeMm, wantedMm: limit.value },
        fix: {
          label: 'planRelief',
          facts: {},
          changes: [place.change(['recipe', 'reliefFromRaisedParts'], true)],
        },
      }),
    ];
  });

/** Clean paper around a print: to the edge of its sheet, or to the cut in the middle between two pieces. */
function paperEdge(job: ResolvedJob, print: SizeMm): number | null {
  const share = sheetShare(job, print);
  if (share === 'none') return null;
  if (share === 'shared') return job.workshop.policy.gutterMm / 2;
  return Math.max(0, ...[print, turned(print)].flatMap((size) => cleanEdge(job.sheet, size) ?? []));
}

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
  const helps = next !== null && fillOf(job, next.to, next.perSheet) >= least.value;
  return [
    makeFinding({
      id: 'LAY-07',
      severity: 'note',
      variant: helps ? 'smaller' : 'empty',
      where: place.where('prints', printIndex),
      found: { value: fill, unit: 'share' },
      limit: { value: least.value, unit: 'share' },
      facts: {
        placement: place.placed.placement.name,
        sheet: job.sheet.name,
        empty: 1 - fill,
        perSheet: count,
        ...(helps ? { betterPerSheet: next.perSheet, ...next.to } : {}),
      },
      fix: helps ? resizeFix(place, printIndex, next.to) : null,
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

export const sheetUseRules: readonly Rule[] = [paperLine, sheetFill, mixedSheets];
