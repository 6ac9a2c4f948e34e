import type { Entry } from '@/shared/schemas/happened';
import type { Recipe } from '@/shared/schemas/job';
import type { PressTest } from '@/shared/schemas/making/pressLog';
import type { PressFault } from '@/shared/tables/faults';
import { celsiusFromFahrenheit } from '@/shared/units';
import { type ChangedThing, changedThings } from './changedThings';
import { type FaultMove, faultRules } from './faultRules';
import { inPressOrder } from './pressedEntry';

export type TestEntry = Pick<Entry, 'id' | 'device' | 'count' | 'at'> & { readonly body: PressTest };

/** A test press, and what differs from the one before it on the same blank in the same press. */
export interface TestOfTrail {
  readonly entry: TestEntry;
  /** Null of the first. */
  readonly changed: readonly ChangedThing[] | null;
  /** Two things at once: nobody can tell which of them did it. */
  readonly isSeveral: boolean;
  readonly next: readonly NextMove[];
}

/** What to change next against a fault, and nothing else with it; null where all that is known was tried. */
interface NextMove {
  readonly fault: PressFault;
  readonly move: FaultMove | null;
}

/**
 * The tests of one blank in one press, whichever their recipes: a change of the recipe is what is looked at.
 *
 * @param tests in force, in any order
 * @returns the oldest first
 */
export function testTrail(
  tests: readonly TestEntry[],
  { blankId, pressId }: { readonly blankId: string; readonly pressId: string },
): readonly TestOfTrail[] {
  const own = inTestOrder(tests.filter(({ body }) => body.blankId === blankId && body.pressId === pressId));
  return own.map((entry, at) => {
    const before = own[at - 1]?.body;
    const changed = before === undefined ? null : changedThings(before, entry.body);
    const tried = before === undefined ? [] : movesBetween(before.recipe, entry.body.recipe);
    return {
      ...{ entry, changed, isSeveral: (changed?.length ?? 0) > 1 },
      next: entry.body.faults.map((fault) => ({ fault, move: nextMove(fault, tried) })),
    };
  });
}

/**
 * Tests in the order of their days, for one may be noted later; those of a day in the order in which they were noted.
 *
 * @param tests in force, in any order
 */
export const inTestOrder = <Of extends TestEntry>(tests: readonly Of[]): readonly Of[] =>
  inPressOrder(tests).toSorted((one, other) =>
    one.body.day < other.body.day ? -1 : one.body.day > other.body.day ? 1 : 0,
  );

/** @param tried what was just done, and the fault is still there */
export function nextMove(fault: PressFault, tried: readonly FaultMove[] = []): FaultMove | null {
  const rules = faultRules[fault];
  const last = rules.findLastIndex((move) => tried.includes(move));
  return rules[last + 1] ?? null;
}

// Helpers

function movesBetween(before: Recipe, after: Recipe): readonly FaultMove[] {
  const rose = (of: (recipe: Recipe) => number): number => Math.sign(of(after) - of(before));
  const [dwell, heat] = [rose(({ dwellSeconds }) => dwellSeconds), rose(celsiusOf)];
  const found: readonly (readonly [boolean, FaultMove])[] = [
    [dwell > 0, 'dwellLonger'],
    [dwell < 0, 'dwellShorter'],
    [heat > 0, 'hotter'],
    [heat < 0, 'cooler'],
    [heat < 0 && dwell > 0, 'coolerLonger'],
    [rose(pressureOf) < 0, 'lessPressure'],
    [rose(pressureOf) > 0, 'pressurePadSeams'],
    [rose(({ preheatSeconds }) => preheatSeconds ?? 0) > 0, 'preheatLonger'],
    [after.steps.tapeEdges === true && before.steps.tapeEdges !== true, 'tapeCoolLift'],
    [after.reliefFromRaisedParts && !before.reliefFromRaisedParts, 'pillowAndTornEdges'],
  ];
  return found.flatMap(([is, move]) => (is ? [move] : []));
}

const celsiusOf = ({ temperature: { value, unit } }: Recipe): number =>
  unit === 'C' ? value : celsiusFromFahrenheit(value);

const LEVELS = ['light', 'lightMedium', 'medium', 'mediumFirm', 'firm'];

/** By the gauge where it has one, else by the word; kPa count for more than any word. */
const pressureOf = ({ pressure, pressureKpa }: Recipe): number => pressureKpa ?? LEVELS.indexOf(pressure);
