import { isSpeck } from '@/lib/check/isSpeck';
import { resizeFix } from '@/lib/check/printFix';
import type { Rule } from '@/lib/check/rule';
import { makeFinding } from '@/lib/findings/makeFinding';
import type { PlacementPlace, PrintPlace } from '@/lib/job/places';
import { placementPlaces } from '@/lib/job/places';
import type { SizeMm } from '@/lib/job/tidyLength';
import type { Finding, Fix } from '@/shared/finding';
import type { Workshop } from '@/shared/schemas/workshop';
import { thresholds } from '@/shared/tables/thresholds';
import { insideSize } from './insideSize';

/** ART-04: the picture and the box it goes into have different shapes. */
export const shapeRule: Rule = ({ resolved }) =>
  placementPlaces(resolved).flatMap((place) =>
    place.prints.flatMap((print) => judgeShape(place, print, resolved.workshop.units.length)),
  );

function judgeShape(
  place: PlacementPlace,
  { print, printIndex }: PrintPlace,
  unit: Workshop['units']['length'],
): readonly Finding[] {
  const { artwork, placement } = place.placed;
  // A drawing is clean at any size and has no pixels of its own, but it has a shape.
  const drawn = artwork.pixels ?? artwork.picture;
  if (drawn === null || isSpeck(print)) return [];
  const artShape = drawn.width / drawn.height;
  const boxShape = print.widthMm / print.heightMm;
  const off = Math.max(artShape / boxShape, boxShape / artShape) - 1;
  const limits = thresholds.shape;
  if (off < limits.note.value - 1e-9) return [];
  const isStretched = placement.fit === 'stretch';
  const severity = isStretched ? 'stop' : off > limits.caution.value + 1e-9 ? 'caution' : 'note';
  const inside = insideSize(artShape, print, unit);
  return [
    makeFinding({
      id: 'ART-04',
      severity,
      variant: placement.fit,
      where: place.where('prints', printIndex),
      found: { value: off, unit: 'share' },
      limit: { value: limits.note.value, unit: 'share' },
      facts: {
        artwork: artwork.name,
        off,
        widthMm: print.widthMm,
        heightMm: print.heightMm,
        insideWidthMm: inside.widthMm,
        insideHeightMm: inside.heightMm,
        // What a filled box cuts off the longer way of the picture, of both edges together.
        cropMm:
          artShape > boxShape
            ? print.heightMm * artShape - print.widthMm
            : print.widthMm / artShape - print.heightMm,
      },
      fix: shapedFix(place, printIndex, inside, isStretched),
    }),
  ];
}

function shapedFix(
  place: PlacementPlace,
  printIndex: number,
  inside: SizeMm,
  isStretched: boolean,
): Fix | null {
  const fix = resizeFix(place, printIndex, inside);
  if (fix === null || !isStretched) return fix;
  return { ...fix, changes: [place.change(['fit'], 'inside'), ...fix.changes] };
}
