import { isSpeck } from '@/lib/check/isSpeck';
import { resizeFix } from '@/lib/check/printFix';
import type { Rule, Scene } from '@/lib/check/rule';
import { fits, inset, turned } from '@/lib/check/sheets/sheetShare';
import { makeFinding } from '@/lib/findings/makeFinding';
import type { PlacementPlace, PrintPlace } from '@/lib/job/places';
import { placementPlaces } from '@/lib/job/places';
import { enlargedSize } from '@/lib/job/tidyLength';
import type { Finding, Fix } from '@/shared/finding';
import { textileKinds } from '@/shared/schemas/blank';
import { thresholds } from '@/shared/tables/thresholds';

/** ART-05: letters and lines that fill in, because dye spreads as it turns to gas. */
export const finestParts: Rule = ({ resolved }) =>
  placementPlaces(resolved).flatMap((place) => {
    const [worst] = place.prints
      .flatMap((print) => judgePrint(resolved, place, print))
      .sort((a, b) => Number(a.facts.share) - Number(b.facts.share));
    return worst === undefined ? [] : [worst];
  });

function judgePrint(
  job: Scene['resolved'],
  place: PlacementPlace,
  printPlace: PrintPlace,
): readonly Finding[] {
  const { print, printIndex } = printPlace;
  const { artwork, placement } = place.placed;
  const { finest } = artwork;
  if (finest === null || isSpeck(print)) return [];
  const widthMm = pictureWidth(place, print);
  const isCloth = textileKinds.includes(place.line.blank.kind);
  const limits = thresholds.finest;
  const reversed = finest.reversed ? limits.reversed.value : 1;
  const parts = [
    { variant: 'letters', mm: finest.capHeightMm, least: isCloth ? limits.capOnCloth : limits.capOnHardGood },
    // A hard, smooth coating holds a line that cloth lets run.
    { variant: 'lines', mm: isCloth ? finest.lineMm : null, least: limits.lineOnCloth },
  ].flatMap(({ variant, mm, least }) =>
    mm === null ? [] : [{ variant, mm: (mm * widthMm) / finest.atWidthMm, leastMm: least.value * reversed }],
  );
  const tooFine = parts.filter(({ mm, leastMm }) => mm < leastMm - 1e-6);
  const [worst] = tooFine.sort((a, b) => a.mm / a.leastMm - b.mm / b.leastMm);
  if (worst === undefined) return [];
  return [
    makeFinding({
      id: 'ART-05',
      severity: 'caution',
      variant: worst.variant,
      where: place.where('prints', printIndex),
      found: { value: worst.mm, unit: 'mm' },
      limit: { value: worst.leastMm, unit: 'mm' },
      facts: {
        artwork: artwork.name,
        placement: placement.name,
        mm: worst.mm,
        leastMm: worst.leastMm,
        share: worst.mm / worst.leastMm,
        reversed: finest.reversed ? 'yes' : 'no',
        neededWidthMm: (widthMm * worst.leastMm) / worst.mm,
      },
      fix: enlargeFix(job, place, printPlace, worst.leastMm / worst.mm),
    }),
  ];
}

/** A print large enough, where the sheet and every size it goes on hold it with room to spare. */
function enlargeFix(
  { sheet, printer, workshop }: Scene['resolved'],
  place: PlacementPlace,
  { print, printIndex, sizes }: PrintPlace,
  factor: number,
): Fix | null {
  const size = enlargedSize(print, factor, workshop.units.length);
  const printable = inset(sheet, printer.marginMm);
  const { line, placed } = place;
  const rooms = line.blank.sizes.flatMap(({ name, maxPrints }) =>
    sizes.includes(name) ? maxPrints.filter(({ position }) => position === placed.placement.position) : [],
  );
  const near = thresholds.fill.near.value;
  const goesOn = rooms.every(({ widthMm, heightMm }) =>
    fits(size, { widthMm: widthMm * near, heightMm: heightMm * near }),
  );
  const isPrintable = fits(size, printable) || fits(turned(size), printable);
  return goesOn && isPrintable ? resizeFix(place, printIndex, size) : null;
}

/** The picture's own width in the print: narrower than its box where it is fitted inside, wider where it fills it. */
function pictureWidth(
  { placed: { artwork, placement } }: PlacementPlace,
  print: PrintPlace['print'],
): number {
  const drawn = artwork.pixels ?? artwork.picture;
  if (drawn === null || placement.fit === 'stretch') return print.widthMm;
  const shape = drawn.width / drawn.height;
  return placement.fit === 'fill'
    ? Math.max(print.widthMm, print.heightMm * shape)
    : Math.min(print.widthMm, print.heightMm * shape);
}
