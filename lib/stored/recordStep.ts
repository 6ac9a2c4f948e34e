import { latest, nextTurn, redoable } from './history';
import type { Step } from './step';

/** Steps kept; the oldest goes when there are more. */
export const MOST_STEPS = 200;
/** Edits of one field no further apart than this are one step, in milliseconds. */
export const COALESCE_MS = 1000;

/** An edit about to enter the history. */
export interface NewStep {
  readonly label: string;
  readonly tab: string;
  readonly at: number;
  /** When its typing began, where it was typed in several keys. */
  readonly since?: number;
  readonly coalesceKey?: string;
  /** Revision of each document right before the edit; null where the edit makes it. */
  readonly found: Readonly<Record<string, number | null>>;
  /** Revision of each document right after the edit. */
  readonly revisions: Readonly<Record<string, number>>;
  /** Whether the edit overwrote a value set elsewhere, which then must stay reachable as a step of its own. */
  readonly overwrote: boolean;
}

/** How the history changes with an edit. */
interface RecordedStep {
  readonly step: Step;
  /** The step was there already; its content keeps what it had before and takes what is after. */
  readonly extended: boolean;
  /** Steps to drop: what was undone before this edit, and what is over the limit. */
  readonly dropped: readonly number[];
}

/**
 * Enters an edit into the history.
 *
 * @param highestSeq highest number any row has, readable or not; 0 where there are none
 */
export function recordStep(steps: readonly Step[], edit: NewStep, highestSeq: number): RecordedStep {
  const undone = redoable(steps, edit.tab).map(({ seq }) => seq);
  const previous = latest(steps.filter(({ tab }) => tab === edit.tab));
  const extended = previous !== null && goesOn(previous, edit);
  const { label, tab, at, revisions, coalesceKey } = edit;
  const step: Step = {
    seq: extended ? previous.seq : highestSeq + 1,
    turn: nextTurn(steps),
    label,
    tab,
    at,
    state: 'done',
    revisions,
    ...(coalesceKey === undefined ? {} : { coalesceKey }),
  };
  const kept = steps
    .filter(({ seq }) => seq !== step.seq && !undone.includes(seq))
    .toSorted((one, other) => other.turn - one.turn);
  return { step, extended, dropped: [...undone, ...kept.slice(MOST_STEPS - 1).map(({ seq }) => seq)] };
}

const goesOn = (previous: Step, edit: NewStep): boolean =>
  previous.state === 'done' &&
  previous.coalesceKey !== undefined &&
  previous.coalesceKey === edit.coalesceKey &&
  (edit.since ?? edit.at) - previous.at <= COALESCE_MS &&
  (edit.since ?? edit.at) >= previous.at &&
  !edit.overwrote &&
  sameDocuments(previous.revisions, edit.found);

/** An edit made elsewhere in between moves the revision; undoing both at once would take that back as well. */
function sameDocuments(left: Step['revisions'], found: NewStep['found']): boolean {
  const ids = Object.keys(found);
  return ids.length === Object.keys(left).length && ids.every((id) => left[id] === found[id]);
}
