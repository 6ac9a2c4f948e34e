import { canonicalText } from '@/lib/stored/canonicalText';
import type { Recipe } from '@/shared/schemas/job';
import type { PressTest } from '@/shared/schemas/making/pressLog';

/** What may differ from one test to the next. */
const changeableThings = [
  'temperature',
  'dwell',
  'pressure',
  'preheat',
  'paper',
  'relief',
  'lintRoll',
  'tape',
  'cooling',
  'perPress',
  'cloth',
  'paperLot',
  'inkLot',
  'artwork',
] as const;
export type ChangedThing = (typeof changeableThings)[number];

/**
 * What was changed between two tests. More than one thing, and nobody can tell which of them did it.
 *
 * A lot that was not noted of either test is not known to differ.
 */
export function changedThings(before: PressTest, after: PressTest): readonly ChangedThing[] {
  return changeableThings.filter((thing) => {
    const [one, other] = [partOf(thing, before), partOf(thing, after)];
    const isUnknown = UNKNOWN_WHERE_NULL.has(thing) && (one === null || other === null);
    return !isUnknown && canonicalText(one) !== canonicalText(other);
  });
}

// Helpers

const UNKNOWN_WHERE_NULL: ReadonlySet<ChangedThing> = new Set(['cloth', 'paperLot', 'inkLot', 'artwork']);

function partOf(thing: ChangedThing, test: PressTest): unknown {
  switch (thing) {
    case 'cloth':
      return test.lot;
    case 'paperLot':
      return test.paperLot;
    case 'inkLot':
      return test.inkLot;
    case 'artwork':
      return test.artworkId;
    default:
      return recipePart(thing, test.recipe);
  }
}

function recipePart(
  thing: Exclude<ChangedThing, 'cloth' | 'paperLot' | 'inkLot' | 'artwork'>,
  { steps, ...recipe }: Recipe,
): unknown {
  switch (thing) {
    case 'temperature':
      return recipe.temperature;
    case 'dwell':
      return recipe.dwellSeconds;
    case 'pressure':
      return [recipe.pressure, recipe.pressureKpa];
    case 'preheat':
      return recipe.preheatSeconds;
    case 'paper':
      return [recipe.protectivePaper, recipe.barrierPaper];
    case 'relief':
      return recipe.reliefFromRaisedParts;
    case 'lintRoll':
      return steps.lintRoll;
    case 'tape':
      return steps.tapeEdges;
    case 'cooling':
      return [steps.coolSeconds, steps.evenCooling];
    case 'perPress':
      return steps.piecesPerPress;
    default:
      return thing satisfies never;
  }
}
