import type { Rule } from '@/lib/check/rule';
import { makeFinding } from '@/lib/findings/makeFinding';
import { placementPlaces } from '@/lib/job/places';
import { roundDecimal } from '@/shared/decimal';

/**
 * RATE-03: hands and the press working alone add up to less time than the press is closed, so minutes are missing in
 * pay or in the plan. An oven holds several pieces at once: its share of the dwell may be shorter. Minutes are a
 * piece's share, so pieces that lie in one press fill its dwell together.
 */
export const underDwellRule: Rule = ({ resolved }) =>
  placementPlaces(resolved).flatMap((place) => {
    const { placement, press, handMinutes, aloneMinutes } = place.placed;
    const dwell = placement.recipe.dwellSeconds / 60;
    const together = placement.recipe.steps.piecesPerPress;
    const given = (handMinutes.value + aloneMinutes.value) * together;
    if (press.kind === 'oven' || given >= dwell - 1e-9) return [];
    const minutes = roundDecimal(dwell / together - handMinutes.value, 2, 'ceiling');
    return [
      makeFinding({
        id: 'RATE-03',
        severity: 'caution',
        variant: 'underDwell',
        // Both minutes are asked about by themselves: this is about how long the press is closed.
        where: place.where('recipe', 'dwellSeconds'),
        found: { value: given, unit: 'min' },
        limit: { value: dwell, unit: 'min' },
        facts: {
          placement: placement.name,
          minutes: given,
          seconds: placement.recipe.dwellSeconds,
        },
        fix: {
          label: 'setAlone',
          facts: { minutes },
          changes: [
            place.change(['aloneMinutes'], {
              value: minutes,
              unit: 'min',
              date: resolved.asOf,
              origin: 'typical',
            }),
          ],
        },
      }),
    ];
  });
