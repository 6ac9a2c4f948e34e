import { placeInBox } from '@/lib/artwork/placeInBox';
import { isSpeck } from '@/lib/check/isSpeck';
import { resizeFix, shrinkFix } from '@/lib/check/printFix';
import type { Rule } from '@/lib/check/rule';
import { makeFinding } from '@/lib/findings/makeFinding';
import type { PlacementPlace, PrintPlace } from '@/lib/job/places';
import { placementPlaces } from '@/lib/job/places';
import type { SizeMm } from '@/lib/job/tidyLength';
import type { Finding, Fix, Severity } from '@/shared/finding';
import type { Artwork } from '@/shared/schemas/artwork';
import { textileKinds } from '@/shared/schemas/blank';
import type { Workshop } from '@/shared/schemas/workshop';
import { thresholds } from '@/shared/tables/thresholds';
import { mmFromInches } from '@/shared/units';
import { insideSize } from './insideSize';

/** ART-01 on cloth, ART-02 on hard goods: pixels per inch of the picture at its printed size. Line art is clean at any. */
const pixelDensity: Rule = ({ resolved }) =>
  placementPlaces(resolved).flatMap((place) =>
    place.prints.flatMap((print) => judgePrint(place, print, resolved.workshop.units.length)),
  );

function judgePrint(
  place: PlacementPlace,
  printPlace: PrintPlace,
  unit: Workshop['units']['length'],
): readonly Finding[] {
  const { artwork, placement } = place.placed;
  if (artwork.pixels === null || isSpeck(printPlace.print)) return [];
  const { print, printIndex } = printPlace;
  // A picture inside its box prints smaller than the box, and so denser.
  const { ppi, ...printed } = placeInBox(artwork.pixels, print, placement.fit);
  const isCloth = textileKinds.includes(place.line.blank.kind);
  const severity = isCloth ? severityOnCloth(ppi) : severityOnHardGood(ppi);
  if (severity === null) return [];
  const clean = (isCloth ? thresholds.resolution.cloth : thresholds.resolution.hardGood).clean.value;
  const most = cleanSize(artwork.pixels, clean);
  return [
    makeFinding({
      id: isCloth ? 'ART-01' : 'ART-02',
      severity,
      variant: severity,
      where: place.where('prints', printIndex),
      found: { value: ppi, unit: 'ppi' },
      limit: { value: clean, unit: 'ppi' },
      facts: {
        artwork: artwork.name,
        ppi,
        clean,
        widthMm: printed.widthMm,
        heightMm: printed.heightMm,
        cleanWidthMm: most.widthMm,
        cleanHeightMm: most.heightMm,
      },
      fix: cleanFix(place, printPlace, ppi / clean, most, unit),
    }),
  ];
}

/** A cropped picture keeps its box's shape; any other is proposed whole, in its own shape, inside the box. */
function cleanFix(
  place: PlacementPlace,
  printPlace: PrintPlace,
  factor: number,
  most: SizeMm,
  unit: Workshop['units']['length'],
): Fix | null {
  if (place.placed.placement.fit !== 'inside') return shrinkFix(place, printPlace, factor, unit);
  const { print, printIndex } = printPlace;
  const room = {
    widthMm: Math.min(print.widthMm, most.widthMm),
    heightMm: Math.min(print.heightMm, most.heightMm),
  };
  return resizeFix(place, printIndex, insideSize(most.widthMm / most.heightMm, room, unit));
}

function severityOnCloth(ppi: number): Severity | null {
  const { cloth, tolerance } = thresholds.resolution;
  const shown = ppi + tolerance.value;
  if (shown < cloth.least.value) return 'stop';
  if (shown < cloth.soft.value) return 'caution';
  return shown < cloth.clean.value ? 'note' : null;
}

function severityOnHardGood(ppi: number): Severity | null {
  const { hardGood, tolerance } = thresholds.resolution;
  const shown = ppi + tolerance.value;
  if (shown < hardGood.least.value) return 'stop';
  return shown < hardGood.clean.value ? 'caution' : null;
}

/** The largest size of the whole picture that is clean. */
const cleanSize = (pixels: NonNullable<Artwork['pixels']>, clean: number) => ({
  widthMm: mmFromInches(pixels.width / clean),
  heightMm: mmFromInches(pixels.height / clean),
});

export const resolutionRules: readonly Rule[] = [pixelDensity];
