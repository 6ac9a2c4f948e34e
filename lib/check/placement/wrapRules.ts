import { isSpeck } from '@/lib/check/isSpeck';
import { shrinkFix } from '@/lib/check/printFix';
import type { Rule } from '@/lib/check/rule';
import { makeFinding } from '@/lib/findings/makeFinding';
import type { PlacementPlace, PrintPlace } from '@/lib/job/places';
import { placementPlaces } from '@/lib/job/places';
import type { Finding, Where } from '@/shared/finding';
import type { BlankSize } from '@/shared/schemas/blank';
import type { Workshop } from '@/shared/schemas/workshop';
import { thresholds } from '@/shared/tables/thresholds';

interface Wrapped {
  readonly size: string;
  readonly wrap: NonNullable<BlankSize['wrap']>;
  readonly where: Where;
}

/** LAY-12: a wrap longer than there is room around the piece laps over itself; a short one leaves a bare strip. */
const wrapLength: Rule = ({ resolved }) =>
  wraps(placementPlaces(resolved)).flatMap(({ place, print, wrapped }) =>
    judgeLength(place, print, wrapped, resolved.workshop.units.length),
  );

function judgeLength(
  place: PlacementPlace,
  printPlace: PrintPlace,
  wrapped: readonly Wrapped[],
  unit: Workshop['units']['length'],
): readonly Finding[] {
  const { print, printIndex } = printPlace;
  const rooms = wrapped
    .map(({ size, wrap }) => ({
      size,
      isSeamless: wrap.handleGapMm === 0,
      roomMm: wrap.circumferenceMm - wrap.handleGapMm,
    }))
    .sort((a, b) => a.roomMm - b.roomMm);
  const { overlap, gap } = thresholds.wrap;
  const tooLong = rooms.find(
    ({ roomMm, isSeamless }) => print.widthMm > roomMm + (isSeamless ? overlap.value : 0) + 1e-6,
  );
  // With a handle there is a bare strip by design; only a seamless wrap is to close.
  const tooShort = rooms.findLast(
    ({ roomMm, isSeamless }) => isSeamless && print.widthMm < roomMm - gap.value - 1e-6,
  );
  const found = tooLong ?? tooShort;
  if (found === undefined) return [];
  const apartMm = Math.abs(print.widthMm - found.roomMm);
  return [
    makeFinding({
      id: 'LAY-12',
      severity: tooLong === undefined ? 'caution' : 'stop',
      variant: tooLong === undefined ? 'short' : 'long',
      where: place.where('prints', printIndex),
      found: { value: print.widthMm, unit: 'mm' },
      limit: { value: found.roomMm, unit: 'mm' },
      facts: {
        placement: place.placed.placement.name,
        size: found.size,
        widthMm: print.widthMm,
        roomMm: found.roomMm,
        apartMm,
      },
      ...(tooLong === undefined
        ? {}
        : { fix: shrinkFix(place, printPlace, tooLong.roomMm / print.widthMm, unit) }),
    }),
  ];
}

/** LAY-13: a straight picture leans on a side that leans. */
const taper: Rule = ({ resolved }) =>
  wraps(placementPlaces(resolved)).flatMap(({ place, wrapped }): readonly Finding[] => {
    const { lean, tooSteep } = thresholds.wrap;
    const [steepest] = wrapped.toSorted((a, b) => b.wrap.taperDegrees - a.wrap.taperDegrees);
    if (steepest === undefined || steepest.wrap.taperDegrees <= lean.value + 1e-9) return [];
    const isTooSteep = steepest.wrap.taperDegrees > tooSteep.value + 1e-9;
    return [
      makeFinding({
        id: 'LAY-13',
        severity: isTooSteep ? 'stop' : 'caution',
        variant: isTooSteep ? 'steep' : 'lean',
        where: steepest.where,
        found: { value: steepest.wrap.taperDegrees, unit: '°' },
        limit: { value: lean.value, unit: '°' },
        facts: {
          placement: place.placed.placement.name,
          size: steepest.size,
          degrees: steepest.wrap.taperDegrees,
        },
      }),
    ];
  });

/** Prints that go around a piece somebody measured. */
function wraps(places: readonly PlacementPlace[]) {
  return places
    .filter(({ placed }) => placed.placement.position === 'wrap')
    .flatMap((place) =>
      place.prints.flatMap((print) => {
        const wrapped = place.line.blank.sizes.flatMap(({ name, wrap }, index): readonly Wrapped[] =>
          wrap === null || !print.sizes.includes(name)
            ? []
            : [
                {
                  size: name,
                  wrap,
                  where: {
                    document: 'blank',
                    id: place.line.line.blankId,
                    path: ['sizes', index, 'wrap', 'taperDegrees'],
                    lineId: place.line.line.id,
                    placementId: place.placed.placement.id,
                  },
                },
              ],
        );
        return wrapped.length === 0 || isSpeck(print.print) ? [] : [{ place, print, wrapped }];
      }),
    );
}

export const wrapRules: readonly Rule[] = [wrapLength, taper];
