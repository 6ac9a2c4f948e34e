import type { Step } from './step';

/**
 * The step that undo takes back: the last one this tab did, and once it has none, the last one of all, so that
 * after a restart the history goes on where it was.
 *
 * @returns null where nothing is left to undo
 */
export function nextUndo(steps: readonly Step[], tab: string): Step | null {
  const done = steps.filter(({ state }) => state === 'done');
  return latest(done.filter((step) => step.tab === tab)) ?? latest(done);
}

/**
 * The step that redo does again: the one undone last.
 *
 * @returns null where nothing is left to redo
 */
export const nextRedo = (steps: readonly Step[], tab: string): Step | null => latest(redoable(steps, tab));

/** @returns the undone steps this tab can redo; a tab that has done nothing yet goes on with what is there. */
export function redoable(steps: readonly Step[], tab: string): readonly Step[] {
  const undone = steps.filter(({ state }) => state === 'undone');
  return steps.some((step) => step.tab === tab) ? undone.filter((step) => step.tab === tab) : undone;
}

/** @returns the steps as they are after one was undone or redone by this tab, which takes it over. */
export const turnStep = (
  steps: readonly Step[],
  step: Step,
  to: { readonly state: Step['state']; readonly tab: string; readonly revisions: Step['revisions'] },
): Step => ({ ...withoutKey(step), ...to, turn: nextTurn(steps) });

/** @returns the turn that comes after all that were. */
export const nextTurn = (steps: readonly Step[]): number => 1 + Math.max(0, ...steps.map(({ turn }) => turn));

/** @returns the step that was done or undone last. */
export const latest = (steps: readonly Step[]): Step | null =>
  steps.reduce<Step | null>((best, step) => (best === null || step.turn > best.turn ? step : best), null);

/** A step that was undone and redone is finished: later typing in the same field is a new step. */
const withoutKey = ({ coalesceKey: _, ...step }: Step): Step => step;
