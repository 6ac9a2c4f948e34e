import { isSpeck } from '@/lib/check/isSpeck';
import { shrinkFix } from '@/lib/check/printFix';
import type { Rule } from '@/lib/check/rule';
import { makeFinding } from '@/lib/findings/makeFinding';
import type { ResolvedJob } from '@/lib/job/checkedJob';
import { type PlacementPlace, type PrintPlace, placementPlaces } from '@/lib/job/places';
import { type SizeMm, scaledSize } from '@/lib/job/tidyLength';
import { layOutPrint, printsOf } from '@/lib/layout/layOutPrint';
import { type LyingPrint, lyingAlone } from '@/lib/layout/lyingPrints';
import { tapeMarginMm } from '@/lib/layout/tapeMarginMm';
import type { Finding } from '@/shared/finding';
import type { Substrate } from '@/shared/schemas/blank';
import { thresholds } from '@/shared/tables/thresholds';
import { fitsWithin } from '@/shared/units';
import { longRollPrints } from './pageLength';
import { taped } from './taped';

/** @returns what is found of prints by the places they lie at on the sheets of the layout. */
export function asItLies(job: ResolvedJob, prints: readonly LyingPrint[]): readonly Finding[] {
  const lying = placementPlaces(job).map((place) => ({
    place,
    prints: place.prints.flatMap((printPlace) => {
      const lies = prints.find((one) => isOf(one, place, printPlace));
      return lies === undefined || isSpeck(printPlace.print) ? [] : [{ printPlace, lies }];
    }),
  }));
  return [
    ...lying.flatMap(({ place, prints: own }) =>
      own.flatMap(({ printPlace, lies }) => tape(job, place, printPlace, lies)),
    ),
    ...lying.flatMap(({ place, prints: own }) => paperLine(job, place, own)),
    ...longRollPrints(job, prints),
  ];
}

/** Prints that share no sheets lie as each lies by itself; the others are looked at once they are laid out. */
const apart: Rule = ({ resolved }) =>
  resolved.job.gang === 'together'
    ? []
    : asItLies(
        resolved,
        resolved.lines.flatMap((line) =>
          line.placements.flatMap(({ placement }) =>
            printsOf(line, placement).flatMap((print) => lies(resolved, print) ?? []),
          ),
        ),
      );

type CountedPrint = ReturnType<typeof printsOf>[number];

function lies(job: ResolvedJob, print: CountedPrint): LyingPrint | undefined {
  if (isSpeck(print)) return undefined;
  const laid = layOutPrint(job, print);
  return laid === null ? undefined : lyingAlone(laid, job.sheet);
}

/**
 * LAY-04: clear paper to the edge of the sheet. A piece that is cut from its neighbours has half the gutter there for
 * tape, which LAY-06 judges; at the outer edge it needs as much as that.
 */
function tape(
  job: ResolvedJob,
  place: PlacementPlace,
  printPlace: PrintPlace,
  { edgeMm, isAlone }: LyingPrint,
): readonly Finding[] {
  const wantedMm = wantedEdge(job, isAlone);
  if (fitsWithin(wantedMm, edgeMm)) return [];
  const { least } = thresholds.tape;
  const isStop = isAlone && !fitsWithin(least.value, edgeMm) && place.line.blank.kind === 'garment';
  return [
    makeFinding({
      id: 'LAY-04',
      severity: isStop ? 'stop' : 'caution',
      variant: isStop ? 'none' : isAlone ? 'narrow' : 'outer',
      where: place.where('prints', printPlace.printIndex),
      found: { value: edgeMm, unit: 'mm' },
      limit: { value: isStop ? least.value : wantedMm, unit: 'mm' },
      facts: { placement: place.placed.placement.name, marginMm: Math.max(0, edgeMm), wantedMm },
      fix: isAlone ? smaller(job, place, printPlace) : null,
    }),
  ];
}

const wantedEdge = ({ workshop }: ResolvedJob, isAlone: boolean): number =>
  isAlone ? tapeMarginMm(workshop) : thresholds.tape.least.value;

/** A size is proposed only where it leaves room as it would then lie; smaller prints may lie otherwise. */
function smaller(job: ResolvedJob, place: PlacementPlace, printPlace: PrintPlace) {
  const { print, printIndex } = printPlace;
  const unit = job.workshop.units.length;
  const factor = taped(job, print);
  if (!(factor > 0 && factor < 1)) return null;
  const size: SizeMm = scaledSize(print, factor, unit);
  const counted = printsOf(place.line, place.placed.placement).find((one) => one.print === printIndex);
  const then = counted === undefined ? undefined : lies(job, { ...counted, ...size });
  return then !== undefined && fitsWithin(wantedEdge(job, then.isAlone), then.edgeMm)
    ? shrinkFix(place, printPlace, factor, unit)
    : null;
}

/** Light or textured knits, in which the edge of the paper presses a line. */
const marked: readonly Substrate[] = ['polyesterShirt', 'performancePolyester', 'blend65'];

/** LAY-05: the edge of the paper lies close to the picture on cloth that keeps a crease. */
function paperLine(
  job: ResolvedJob,
  place: PlacementPlace,
  prints: readonly { readonly printPlace: PrintPlace; readonly lies: LyingPrint }[],
): readonly Finding[] {
  const { placement } = place.placed;
  if (!marked.includes(place.line.blank.substrate) || placement.recipe.reliefFromRaisedParts) return [];
  const limit = thresholds.paperLine;
  const [closest] = prints
    .map(({ printPlace, lies: { edgeMm, isAlone } }) => ({
      printPlace,
      // Neighbours are cut apart in the middle between them.
      edgeMm: Math.max(0, isAlone ? edgeMm : Math.min(edgeMm, job.workshop.policy.gutterMm / 2)),
    }))
    .filter(({ edgeMm }) => !fitsWithin(limit.value, edgeMm))
    .toSorted((a, b) => a.edgeMm - b.edgeMm);
  if (closest === undefined) return [];
  const { printPlace, edgeMm } = closest;
  return [
    makeFinding({
      id: 'LAY-05',
      severity: 'note',
      where: place.where('prints', printPlace.printIndex),
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
}

const isOf = (
  { lineId, placementId, print }: LyingPrint,
  { line, placed }: PlacementPlace,
  { printIndex }: PrintPlace,
): boolean => lineId === line.line.id && placementId === placed.placement.id && print === printIndex;

export const lyingRules: readonly Rule[] = [apart];
