import type { Rule } from '@/lib/check/rule';
import { makeFinding } from '@/lib/findings/makeFinding';
import type { PlacementPlace } from '@/lib/job/places';
import { placementPlaces } from '@/lib/job/places';
import type { Finding } from '@/shared/finding';
import { pressureOrder, recipeRanges } from '@/shared/tables/recipeRanges';
import { thresholds } from '@/shared/tables/thresholds';

/**
 * REC-03: pressure. Garments are judged by the gauge where there is one, and by the word; other goods by the
 * word alone, one step either way being a matter of the press. A missing reading is no finding.
 */
export const pressureRule: Rule = ({ resolved }) => placementPlaces(resolved).flatMap(judge);

function judge(place: PlacementPlace): readonly Finding[] {
  const { recipe, name } = place.placed.placement;
  const { blank } = place.line;
  const { pressureLow, pressureHigh, pressureUsual } = thresholds.recipe;
  const isGarment = blank.kind === 'garment';
  const { pressure: ofSubstrate } = recipeRanges[blank.substrate];
  // A garment entered under a row of hard goods is still a garment.
  const usual = isGarment && ofSubstrate === 'firm' ? recipeRanges.polyesterShirt.pressure : ofSubstrate;
  const kpa = isGarment ? recipe.pressureKpa : null;
  const isGaugeHigh = kpa !== null && kpa > pressureHigh.value + 1e-6;
  const isGaugeLow = kpa !== null && kpa < pressureLow.value - 1e-6;
  const steps = pressureOrder.indexOf(recipe.pressure) - pressureOrder.indexOf(usual);
  const isWordHigh = isGarment ? recipe.pressure === 'firm' : steps > 1;
  const isWordLow = !isGarment && steps < -1;
  if (!isGaugeHigh && !isGaugeLow && !isWordHigh && !isWordLow) return [];
  const isHigh = isGaugeHigh || (isWordHigh && !isGaugeLow);
  const isGauge = isGaugeHigh || isGaugeLow;
  return [
    makeFinding({
      id: 'REC-03',
      severity: 'caution',
      variant: isHigh ? 'hard' : 'soft',
      where: place.where('recipe', isGauge ? 'pressureKpa' : 'pressure'),
      found: isGauge && kpa !== null ? { value: kpa, unit: 'kPa' } : recipe.pressure,
      limit: isGauge ? { value: (isHigh ? pressureHigh : pressureLow).value, unit: 'kPa' } : usual,
      facts: {
        placement: name,
        pressure: recipe.pressure,
        usual,
        ...(isGauge && kpa !== null ? { kpa } : {}),
      },
      fix: {
        label: 'setPressure',
        facts: { pressure: usual },
        changes: [
          place.change(['recipe', 'pressure'], usual),
          ...(isGauge ? [place.change(['recipe', 'pressureKpa'], pressureUsual.value)] : []),
        ],
      },
    }),
  ];
}
