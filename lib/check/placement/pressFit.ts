import type { Rule } from '@/lib/check/rule';
import { toldOnce } from '@/lib/check/toldOnce';
import { pressFor, suitsPress } from '@/lib/drafts/pressFor';
import { makeFinding } from '@/lib/findings/makeFinding';
import type { PlacementPlace } from '@/lib/job/places';
import { placementPlaces } from '@/lib/job/places';
import type { SizeMm } from '@/lib/job/tidyLength';
import type { Finding, Fix } from '@/shared/finding';
import type { Press } from '@/shared/schemas/workshop';
import { thresholds } from '@/shared/tables/thresholds';
import { fitsWithin, LENGTH_TOLERANCE_MM } from '@/shared/units';
import { suitedPressFix } from './suitedPressFix';

/** PLC-09: the press is of a kind that cannot take the blank. */
const pressKind: Rule = ({ resolved }) =>
  toldOnce(
    placementPlaces(resolved).flatMap((place) => {
      const { press } = place.placed;
      const { blank } = place.line;
      if (suitsPress(press.kind, blank)) return [];
      const better = pressFor(blank, resolved.workshop.presses);
      const of = { press: press.name, blank: blank.name };
      return [
        makeFinding({
          id: 'PLC-09',
          severity: 'stop',
          ...(better === null
            ? ({ variant: 'none', facts: of } as const)
            : ({ variant: 'other', facts: { ...of, better: better.name } } as const)),
          where: place.where('pressId'),
          found: press.kind,
          limit: blank.kind,
          fix: suitedPressFix(place, resolved),
        }),
      ];
    }),
  );

/** PLC-10: a piece thicker than the press opens does not close evenly. Told where both are known. */
const opening: Rule = ({ resolved }) =>
  toldOnce(
    placementPlaces(resolved).flatMap((place) => {
      const { press } = place.placed;
      const { blank } = place.line;
      const { thicknessMm } = blank.traits;
      const { openingMm } = press.rating;
      if (thicknessMm === null || openingMm === null || fitsWithin(thicknessMm, openingMm)) return [];
      const wider = resolved.workshop.presses.find(
        ({ kind, rating }) =>
          suitsPress(kind, blank) && rating.openingMm !== null && fitsWithin(thicknessMm, rating.openingMm),
      );
      return [
        makeFinding({
          id: 'PLC-10',
          severity: 'stop',
          where: place.where('pressId'),
          found: { value: thicknessMm, unit: 'mm' },
          limit: { value: openingMm, unit: 'mm' },
          facts: { press: press.name, blank: blank.name, thicknessMm, openingMm },
          fix: wider === undefined ? null : pressButton(place, wider),
        }),
      ];
    }),
  );

/** PLC-06: more pieces side by side than the platen covers evenly; a press that wraps a piece takes one. */
const together: Rule = ({ resolved }) =>
  placementPlaces(resolved).flatMap((place): readonly Finding[] => {
    const { placement, press } = place.placed;
    const { piecesPerPress } = placement.recipe.steps;
    const isWrap = press.kind === 'mug' || press.kind === 'tumbler';
    const fit = isWrap ? 1 : onPlaten(place);
    if (fit === null || piecesPerPress <= fit) return [];
    const planned = { placement: placement.name, press: press.name, planned: piecesPerPress };
    return [
      makeFinding({
        id: 'PLC-06',
        severity: 'stop',
        where: place.where('recipe', 'steps', 'piecesPerPress'),
        found: { value: piecesPerPress, unit: 'pieces' },
        limit: { value: fit, unit: 'pieces' },
        ...(isWrap
          ? ({ variant: 'single', facts: planned } as const)
          : ({
              variant: 'platen',
              facts: { ...planned, fit, apartMm: thresholds.betweenPieces.value },
            } as const)),
        fix: {
          label: 'pressTogether',
          facts: { pieces: fit },
          changes: [place.change(['recipe', 'steps', 'piecesPerPress'], fit)],
        },
      }),
    ];
  });

/** @returns how many fit evenly, one at least; null where nobody measured the platen. */
function onPlaten(place: PlacementPlace): number | null {
  const room = place.placed.press.platen;
  if (room === null) return null;
  const apart = thresholds.betweenPieces.value;
  return Math.max(1, Math.min(...place.prints.map((print) => fitting(room, pieceOf(place, print), apart))));
}

/** The place a piece takes: its print, and its own width where that is known and more. */
function pieceOf({ line }: PlacementPlace, { print, sizes }: PlacementPlace['prints'][number]): SizeMm {
  const widths = line.blank.sizes.flatMap(({ name, widthMm }) =>
    widthMm !== null && sizes.includes(name) ? [widthMm] : [],
  );
  return { widthMm: Math.max(print.widthMm, ...widths), heightMm: print.heightMm };
}

/** @returns how many pieces lie on a platen in rows, so far apart, whichever way round they lie. */
function fitting(room: SizeMm, piece: SizeMm, apartMm: number): number {
  const along = (roomMm: number, pieceMm: number) =>
    Math.floor((roomMm + apartMm + LENGTH_TOLERANCE_MM) / (pieceMm + apartMm));
  return Math.max(
    along(room.widthMm, piece.widthMm) * along(room.heightMm, piece.heightMm),
    along(room.widthMm, piece.heightMm) * along(room.heightMm, piece.widthMm),
  );
}

const pressButton = (place: PlacementPlace, { id, name }: Pick<Press, 'id' | 'name'>): Fix => ({
  label: 'usePress',
  facts: { press: name },
  changes: [place.change(['pressId'], id)],
});

export const pressFitRules: readonly Rule[] = [together, pressKind, opening];
