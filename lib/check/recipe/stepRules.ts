import type { Rule } from '@/lib/check/rule';
import { makeFinding } from '@/lib/findings/makeFinding';
import type { PlacementPlace } from '@/lib/job/places';
import { placementPlaces } from '@/lib/job/places';
import { thresholds } from '@/shared/tables/thresholds';

/** REC-05: garments and wood-based goods hold moisture that must be driven out first. */
const preheat: Rule = ({ resolved }) =>
  placementPlaces(resolved).flatMap((place) => {
    const { blank } = place.line;
    const { placement } = place.placed;
    const isNeeded = blank.kind === 'garment' || blank.substrate === 'coatedHardboard';
    if (!isNeeded || (placement.recipe.preheatSeconds ?? 0) > 0) return [];
    const seconds = thresholds.recipe.preheat.value;
    return [
      makeFinding({
        id: 'REC-05',
        severity: 'caution',
        where: place.where('recipe', 'preheatSeconds'),
        limit: { value: seconds, unit: 's' },
        facts: { placement: placement.name, blank: blank.name, seconds },
        fix: {
          label: 'addPreheat',
          facts: { seconds },
          changes: [place.change(['recipe', 'preheatSeconds'], seconds)],
        },
      }),
    ];
  });

/** REC-06: fresh plain paper above and below lets moisture out and catches stray dye. */
const protectivePaper: Rule = ({ resolved }) =>
  placementPlaces(resolved).flatMap((place) => {
    const { placement } = place.placed;
    const paper = placement.recipe.protectivePaper;
    if (paper === 'freshPlain') return [];
    return [
      makeFinding({
        id: 'REC-06',
        severity: paper === 'none' ? 'stop' : 'caution',
        variant: paper,
        where: place.where('recipe', 'protectivePaper'),
        found: paper,
        limit: 'freshPlain',
        facts: { placement: placement.name },
        fix: {
          label: 'useFreshPaper',
          facts: {},
          changes: [place.change(['recipe', 'protectivePaper'], 'freshPlain')],
        },
      }),
    ];
  });

/** REC-12: how often a recipe has worked on a blank. Told once a blank, for its least proven placement. */
const proven: Rule = ({ resolved }) => {
  const places = placementPlaces(resolved);
  const blankOf = (place: PlacementPlace) => place.line.line.blankId;
  return [...new Set(places.map(blankOf))].flatMap((blankId) => {
    const [least] = places
      .filter((place) => blankOf(place) === blankId)
      .toSorted((a, b) => timesProven(a) - timesProven(b));
    const few = thresholds.recipe.provenFew.value;
    if (least === undefined || timesProven(least) >= few) return [];
    const times = timesProven(least);
    return [
      makeFinding({
        id: 'REC-12',
        severity: times === 0 ? 'caution' : 'note',
        variant: times === 0 ? 'never' : 'seldom',
        where: least.where('recipe', 'provenPresses'),
        found: { value: times, unit: 'presses' },
        limit: { value: few, unit: 'presses' },
        facts: { blank: least.line.blank.name, proven: times, few, scrap: least.placed.scrap.value },
      }),
    ];
  });
};

const timesProven = ({ placed }: PlacementPlace): number => placed.placement.recipe.provenPresses;

export const stepRules: readonly Rule[] = [preheat, protectivePaper, proven];
