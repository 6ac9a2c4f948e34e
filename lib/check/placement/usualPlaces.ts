import { wantedChildSizes } from '@/lib/check/children/wantedChildSizes';
import { resizeFix, shrinkFix } from '@/lib/check/printFix';
import type { Rule } from '@/lib/check/rule';
import { makeFinding } from '@/lib/findings/makeFinding';
import { placementPlaces } from '@/lib/job/places';
import { enlargedSize, tidyLength } from '@/lib/job/tidyLength';
import type { Finding } from '@/shared/finding';
import { thresholds } from '@/shared/tables/thresholds';
import { LENGTH_TOLERANCE_MM } from '@/shared/units';

/** PLC-03: how far below the collar a print in the middle of front or back begins. A child's front leaves less. */
const belowCollar: Rule = ({ resolved }) =>
  placementPlaces(resolved).flatMap((place) => {
    const { placement } = place.placed;
    const dropMm = placement.dropFromCollarMm;
    const { position } = placement;
    if (place.line.blank.kind !== 'garment' || dropMm === null) return [];
    if (position !== 'front' && position !== 'back') return [];
    const hasChildren = wantedChildSizes(place.line).size > 0;
    const { collar } = thresholds;
    const { least, usual, most } =
      position === 'back' ? collar.back : hasChildren ? collar.youthFront : collar.front;
    const isHigh = dropMm < least.value - LENGTH_TOLERANCE_MM;
    if (!isHigh && dropMm <= most.value + LENGTH_TOLERANCE_MM) return [];
    const isInch = resolved.workshop.units.length === 'in';
    const mm = isInch ? tidyLength(usual.value, 'in') : Math.round(usual.value / 5) * 5;
    const limitMm = (isHigh ? least : most).value;
    return [
      makeFinding({
        id: 'PLC-03',
        severity: 'caution',
        variant: isHigh ? 'high' : 'low',
        where: place.where('dropFromCollarMm'),
        found: { value: dropMm, unit: 'mm' },
        limit: { value: limitMm, unit: 'mm' },
        facts: { placement: placement.name, dropMm, usualMm: mm, limitMm },
        fix: { label: 'setDrop', facts: { mm }, changes: [place.change(['dropFromCollarMm'], mm)] },
      }),
    ];
  });

/** PLC-04: a badge on the chest by its longer side. A small one is right on children's sizes. */
const chestBadge: Rule = ({ resolved }) =>
  placementPlaces(resolved).flatMap((place) => {
    const { placement } = place.placed;
    const { position } = placement;
    if (place.line.blank.kind !== 'garment') return [];
    if (position !== 'leftChest' && position !== 'rightChest') return [];
    const children = wantedChildSizes(place.line);
    const { badge } = thresholds;
    const unit = resolved.workshop.units.length;
    return place.prints.flatMap((printPlace): readonly Finding[] => {
      const { print, printIndex, sizes } = printPlace;
      const mm = Math.max(print.widthMm, print.heightMm);
      const isLarge = mm > badge.most.value + LENGTH_TOLERANCE_MM;
      const isSmall =
        mm < badge.least.value - LENGTH_TOLERANCE_MM && !sizes.every((size) => children.has(size));
      if (!isLarge && !isSmall) return [];
      return [
        makeFinding({
          id: 'PLC-04',
          severity: 'note',
          variant: isLarge ? 'large' : 'small',
          where: place.where('prints', printIndex),
          found: { value: mm, unit: 'mm' },
          limit: { value: (isLarge ? badge.most : badge.least).value, unit: 'mm' },
          facts: {
            placement: placement.name,
            mm,
            leastMm: badge.usualLeast.value,
            mostMm: badge.usualMost.value,
          },
          fix: isLarge
            ? shrinkFix(place, printPlace, badge.usualMost.value / mm, unit)
            : resizeFix(place, printIndex, enlargedSize(print, badge.usualLeast.value / mm, unit)),
        }),
      ];
    });
  });

export const usualPlaceRules: readonly Rule[] = [belowCollar, chestBadge];
