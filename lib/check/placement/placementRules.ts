import { shrinkFix } from '@/lib/check/printFix';
import type { Rule } from '@/lib/check/rule';
import { suitsPress } from '@/lib/drafts/pressFor';
import { makeFinding } from '@/lib/findings/makeFinding';
import type { PlacementPlace } from '@/lib/job/places';
import { placementPlaces } from '@/lib/job/places';
import type { SizeMm } from '@/lib/job/tidyLength';
import type { Finding } from '@/shared/finding';
import { thresholds } from '@/shared/tables/thresholds';
import { fitsWithin } from '@/shared/units';
import { largestPrint } from './largestPrint';

/** PLC-02: one print size over a wide run of sizes looks lost on the largest or wraps round the smallest. */
const oneSizeForAll: Rule = ({ resolved }) =>
  placementPlaces(resolved).flatMap((place) => {
    const { placement } = place.placed;
    if (placement.position !== 'front' && placement.position !== 'back') return [];
    return place.prints.flatMap(({ print, printIndex, sizes }) => {
      const widths = place.line.blank.sizes.flatMap(({ name, widthMm }) =>
        // A piece narrower than any print is a width nobody measured.
        widthMm !== null && widthMm >= thresholds.leastPrint.value && sizes.includes(name)
          ? [{ name, widthMm }]
          : [],
      );
      const [narrowest] = widths.toSorted((a, b) => a.widthMm - b.widthMm);
      const [widest] = widths.toSorted((a, b) => b.widthMm - a.widthMm);
      if (sizes.length < 2 || narrowest === undefined || widest === undefined) return [];
      const { tiny, wide } = thresholds.fill;
      const isWide = print.widthMm / narrowest.widthMm > wide.value + 1e-9;
      const isTiny = print.widthMm / widest.widthMm < tiny.value - 1e-9;
      if (!isWide && !isTiny) return [];
      const at = isWide ? narrowest : widest;
      const share = print.widthMm / at.widthMm;
      const covered = { placement: placement.name, share, size: at.name };
      const smallest = narrowest.name;
      const largest = widest.name;
      return [
        makeFinding({
          id: 'PLC-02',
          severity: 'note',
          ...(isWide && isTiny
            ? ({ variant: 'both', facts: { placement: placement.name, smallest, largest } } as const)
            : isWide
              ? ({ variant: 'wide', facts: { ...covered, smallest } } as const)
              : ({ variant: 'tiny', facts: { ...covered, largest } } as const)),
          where: place.where('prints', printIndex),
          found: { value: share, unit: 'share' },
          limit: { value: isWide ? wide.value : tiny.value, unit: 'share' },
        }),
      ];
    });
  });

/** PLC-05: the platen must reach past the print on all sides. A press of the wrong kind is PLC-09's matter. */
const platen: Rule = ({ resolved }) =>
  placementPlaces(resolved).flatMap((place) => {
    const { placement, press } = place.placed;
    if (!suitsPress(press.kind, place.line.blank)) return [];
    const room = press.platen;
    if (room === null) return [];
    return place.prints.flatMap((printPlace): readonly Finding[] => {
      const { print, printIndex } = printPlace;
      const edge = thresholds.platenEdge.value;
      if (covers(room, print, edge)) return [];
      const isOver = !covers(room, print, 0);
      const factor = Math.max(
        Math.min((room.widthMm - 2 * edge) / print.widthMm, (room.heightMm - 2 * edge) / print.heightMm),
        Math.min((room.heightMm - 2 * edge) / print.widthMm, (room.widthMm - 2 * edge) / print.heightMm),
      );
      const facts = {
        placement: placement.name,
        press: press.name,
        widthMm: print.widthMm,
        heightMm: print.heightMm,
        platenWidthMm: room.widthMm,
        platenHeightMm: room.heightMm,
      };
      return [
        makeFinding({
          id: 'PLC-05',
          severity: isOver ? 'stop' : 'caution',
          ...(isOver
            ? ({ variant: 'over', facts } as const)
            : ({ variant: 'edge', facts: { ...facts, edgeMm: edge } } as const)),
          where: place.where('prints', printIndex),
          found: `${print.widthMm} × ${print.heightMm} mm`,
          limit: `${room.widthMm} × ${room.heightMm} mm`,
          fix: shrinkFix(place, printPlace, factor, resolved.workshop.units.length),
        }),
      ];
    });
  });

/** PLC-08: the finished side is heated again while another is pressed. */
const reheating: Rule = ({ resolved }) =>
  placementPlaces(resolved).flatMap((place: PlacementPlace) => {
    const { placement } = place.placed;
    if (place.index === 0 || placement.recipe.barrierPaper) return [];
    const finished = place.line.placements[place.index - 1]?.placement.name ?? '';
    return [
      makeFinding({
        id: 'PLC-08',
        severity: 'caution',
        where: place.where('recipe', 'barrierPaper'),
        facts: { placement: placement.name, finished },
        fix: {
          label: 'planBarrier',
          facts: {},
          changes: [place.change(['recipe', 'barrierPaper'], true)],
        },
      }),
    ];
  });

const covers = (room: SizeMm, print: SizeMm, edgeMm: number): boolean =>
  [[print.widthMm, print.heightMm] as const, [print.heightMm, print.widthMm] as const].some(
    ([across, down]) =>
      fitsWithin(across + 2 * edgeMm, room.widthMm) && fitsWithin(down + 2 * edgeMm, room.heightMm),
  );

export const placementRules: readonly Rule[] = [largestPrint, oneSizeForAll, platen, reheating];
