import { missingPress, pressFor } from '@/lib/drafts/pressFor';
import { typicalsOf } from '@/lib/drafts/typicalsOf';
import type { ResolvedJob } from '@/lib/job/checkedJob';
import type { PlacementPlace } from '@/lib/job/places';
import type { Change, Fix } from '@/shared/finding';
import { placementTypicals } from '@/shared/tables/typicalRates';

/**
 * The button that puts a print on a press that takes its blank: one the workshop has, else a typical one that is
 * added to it. Minutes nobody has typed become those of that press.
 */
export function suitedPressFix(place: PlacementPlace, { workshop, asOf }: ResolvedJob): Fix {
  const { blank } = place.line;
  const found = pressFor(blank, workshop.presses);
  const press = found ?? missingPress(blank, workshop, asOf);
  const use = [
    place.change(['pressId'], press.id),
    ...typicalMinutes(place, press.kind, asOf, workshop.currency),
  ];
  return found === null
    ? {
        label: 'addPress',
        facts: { kind: press.kind },
        changes: [{ document: 'workshop', path: ['presses', workshop.presses.length], value: press }, ...use],
      }
    : { label: 'usePress', facts: { press: press.name }, changes: use };
}

function typicalMinutes(
  place: PlacementPlace,
  kind: keyof typeof placementTypicals,
  asOf: string,
  currency: string,
): readonly Change[] {
  const typical = typicalsOf(asOf, currency);
  const { scrap, handMinutes, aloneMinutes, hotMinutes } = place.placed.placement;
  const rates = { scrap, handMinutes, aloneMinutes, hotMinutes };
  return (['scrap', 'handMinutes', 'aloneMinutes', 'hotMinutes'] as const).flatMap((name) => {
    const { typical: value, unit } = placementTypicals[kind][name];
    return rates[name]?.origin === 'typical' ? [place.change([name], typical(value, unit))] : [];
  });
}
