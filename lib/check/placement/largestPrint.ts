import type { ChildSize } from '@/lib/check/children/ageSize';
import { wantedChildSizes } from '@/lib/check/children/wantedChildSizes';
import { resizeFix } from '@/lib/check/printFix';
import type { Rule } from '@/lib/check/rule';
import { makeFinding } from '@/lib/findings/makeFinding';
import type { PlacementPlace, PrintPlace } from '@/lib/job/places';
import { placementPlaces } from '@/lib/job/places';
import type { SizeMm } from '@/lib/job/tidyLength';
import { scaledSize } from '@/lib/job/tidyLength';
import type { Finding, Fix } from '@/shared/finding';
import type { Position } from '@/shared/schemas/blank';
import type { Print } from '@/shared/schemas/job';
import type { Workshop } from '@/shared/schemas/workshop';
import { thresholds } from '@/shared/tables/thresholds';
import { fitsWithin } from '@/shared/units';

const MOST_PRINT_SIZES = 10;

interface Crowded {
  readonly size: string;
  readonly room: SizeMm;
  readonly isOver: boolean;
}

/** PLC-01: a print larger than the largest that a size of the blank takes in that place, or close to it. */
export const largestPrint: Rule = ({ resolved }) =>
  placementPlaces(resolved).flatMap((place) =>
    place.prints.flatMap((printPlace) => judge(place, printPlace, resolved.workshop.units.length)),
  );

function judge(
  place: PlacementPlace,
  printPlace: PrintPlace,
  unit: Workshop['units']['length'],
): readonly Finding[] {
  const crowded = crowdedSizes(place, printPlace);
  const over = crowded.filter(({ isOver }) => isOver);
  const told = over.length > 0 ? over : crowded;
  const [first] = told;
  if (first === undefined) return [];
  const { print, printIndex } = printPlace;
  // The tightest of all crowded sizes decides, so that one tap mends both kinds.
  const factor = Math.min(...crowded.map(({ room }) => thresholds.fill.near.value * fillFactor(print, room)));
  const size = scaledSize(print, factor, unit);
  return [
    makeFinding({
      id: 'PLC-01',
      severity: over.length > 0 ? 'stop' : 'caution',
      variant: over.length > 0 ? 'over' : 'near',
      where: place.where('prints', printIndex),
      found: `${print.widthMm} × ${print.heightMm} mm`,
      limit: `${first.room.widthMm} × ${first.room.heightMm} mm`,
      facts: {
        placement: place.placed.placement.name,
        sizes: told.map((entry) => entry.size).join(', '),
        widthMm: print.widthMm,
        heightMm: print.heightMm,
        mostWidthMm: first.room.widthMm,
        mostHeightMm: first.room.heightMm,
      },
      fix: smallerFor(place, printPlace, crowded, size),
    }),
  ];
}

function crowdedSizes({ line, placed }: PlacementPlace, { print, sizes }: PrintPlace): readonly Crowded[] {
  const children = wantedChildSizes(line);
  return line.blank.sizes.flatMap(({ name, maxPrints }) => {
    const { position } = placed.placement;
    const room =
      maxPrints.find((most) => most.position === position) ?? childRoom(children.get(name), position);
    if (!sizes.includes(name) || room === undefined) return [];
    const near = thresholds.fill.near.value;
    const isNear = !(
      fitsWithin(print.widthMm, room.widthMm * near) && fitsWithin(print.heightMm, room.heightMm * near)
    );
    const isOver = !(fitsWithin(print.widthMm, room.widthMm) && fitsWithin(print.heightMm, room.heightMm));
    return isNear ? [{ size: name, room, isOver }] : [];
  });
}

/** What is usual on a child's front and back, where the blank states nothing. */
function childRoom(child: ChildSize | undefined, position: Position): SizeMm | undefined {
  if (child === undefined || (position !== 'front' && position !== 'back')) return undefined;
  const { width, height } = thresholds.childPrint[child === 'youth' ? 'youth' : 'toddler'];
  return { widthMm: width.value, heightMm: height.value };
}

const fillFactor = (print: SizeMm, room: SizeMm): number =>
  Math.min(room.widthMm / print.widthMm, room.heightMm / print.heightMm);

/** The sizes that are too small get a print of their own; where all are, the print itself shrinks. */
function smallerFor(
  place: PlacementPlace,
  { print, printIndex, sizes }: PrintPlace,
  crowded: readonly Crowded[],
  size: SizeMm,
): Fix | null {
  const names = crowded.map((entry) => entry.size);
  const { prints } = place.placed.placement;
  const whole = resizeFix(place, printIndex, size);
  if (whole === null || names.length === sizes.length || prints.length >= MOST_PRINT_SIZES) return whole;
  const kept: Print = { ...print, sizes: print.sizes?.filter((name) => !names.includes(name)) ?? null };
  const added: Print = { ...print, ...size, sizes: names };
  return {
    label: 'smallerForSizes',
    facts: { sizes: names.join(', '), widthMm: size.widthMm, heightMm: size.heightMm },
    changes: [
      place.change(
        ['prints'],
        [...prints.map((other, index) => (index === printIndex ? kept : other)), added],
      ),
    ],
  };
}
