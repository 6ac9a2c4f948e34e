import { isSpeck } from '@/lib/check/isSpeck';
import type { Rule } from '@/lib/check/rule';
import { makeFinding } from '@/lib/findings/makeFinding';
import type { PlacementPlace, PrintPlace } from '@/lib/job/places';
import { placementPlaces } from '@/lib/job/places';
import type { Blank } from '@/shared/schemas/blank';
import { thresholds } from '@/shared/tables/thresholds';

/** Flat goods that are printed from edge to edge. */
const edgeToEdgeKinds: readonly Blank['kind'][] = ['panel', 'mat', 'tile', 'small', 'drinkware'];

/** ART-15: a picture that ends at the edge of the piece leaves a white line where it is laid a little off. */
const bleed: Rule = ({ resolved }) =>
  placementPlaces(resolved).flatMap((place) => {
    const { placement } = place.placed;
    const { least, clear } = thresholds.bleed;
    const mm = placement.bleedMm;
    if (mm === null && !place.prints.some((print) => coversFace(place, print))) return [];
    if (mm !== null && mm >= clear.value - 1e-6) return [];
    const isNone = mm !== null && mm < least.value - 1e-6;
    return [
      makeFinding({
        id: 'ART-15',
        severity: mm === null ? 'note' : isNone ? 'stop' : 'caution',
        variant: mm === null ? 'unmeasured' : isNone ? 'none' : 'short',
        where: place.where('bleedMm'),
        found: mm === null ? null : { value: mm, unit: 'mm' },
        limit: { value: clear.value, unit: 'mm' },
        facts: { placement: placement.name, mm: mm ?? 0, wantedMm: clear.value },
      }),
    ];
  });

/** ART-16: what must be seen whole comes near an edge, a handle or a seam, where dye fades and presses miss. */
const safeZone: Rule = ({ resolved }) =>
  placementPlaces(resolved).flatMap((place) => {
    const { placement } = place.placed;
    const mm = placement.safeZoneMm;
    const { safeZone: limit } = thresholds;
    if (mm === null || mm >= limit.value - 1e-6) return [];
    return [
      makeFinding({
        id: 'ART-16',
        severity: 'caution',
        where: place.where('safeZoneMm'),
        found: { value: mm, unit: 'mm' },
        limit: { value: limit.value, unit: 'mm' },
        facts: { placement: placement.name, mm, wantedMm: limit.value },
      }),
    ];
  });

/** Whether a print is as large as the largest its place takes, on something that is printed to its edges. */
function coversFace(place: PlacementPlace, { print, sizes }: PrintPlace): boolean {
  const { blank } = place.line;
  if (!edgeToEdgeKinds.includes(blank.kind) || isSpeck(print)) return false;
  return blank.sizes.some(({ name, maxPrints }) => {
    const most = maxPrints.find(({ position }) => position === place.placed.placement.position);
    return (
      most !== undefined &&
      sizes.includes(name) &&
      print.widthMm >= most.widthMm - thresholds.bleed.atEdge.value &&
      print.heightMm >= most.heightMm - thresholds.bleed.atEdge.value
    );
  });
}

export const edgeRules: readonly Rule[] = [bleed, safeZone];
