import { isMaking, type MovingStep, placeOf } from './stepOrder';

/**
 * @param before what was noted before the step
 * @returns what a step goes on with, through whose gates it went; undefined where it makes something itself, or nothing
 *   counts that it could go on with
 */
export const madeBefore = <One extends { readonly step: MovingStep; readonly holdsSince: string | null }>(
  what: MovingStep['what'],
  before: readonly One[],
): One | undefined =>
  isMaking(what)
    ? undefined
    : before.findLast(({ step, holdsSince }) => holdsSince !== null && placeOf(step.what) >= madeFrom(what));

// Helpers

/** Blanks bear no picture: whoever packs goes on with prints. */
const madeFrom = (what: MovingStep['what']): number =>
  placeOf(placeOf(what) < placeOf('printed') ? 'blanksOrdered' : 'printed');
