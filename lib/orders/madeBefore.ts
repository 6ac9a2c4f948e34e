import type { OrderGate } from '@/shared/schemas/orderEvents';
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

/** Gates that what was made went through for all that goes on with it, whatever became of the picture or the deposit. */
export const isPassedByMaking = (gate: OrderGate): boolean => gate === 'approval' || gate === 'deposit';

// Helpers

/** Blanks bear no picture: whoever packs goes on with prints. */
const madeFrom = (what: MovingStep['what']): number =>
  placeOf(placeOf(what) < placeOf('printed') ? 'blanksOrdered' : 'printed');
