import type { BackendTx } from '@/app/_backend/backend';
import { changedPath } from '@/lib/merging/changedPath';
import { type DocumentChange, snapshotOf } from '@/lib/stored/documentChange';
import { nextRedo, nextUndo, turnStep } from '@/lib/stored/history';
import type { StoreKinds } from '@/lib/stored/registry';
import { readSteps, type Step } from '@/lib/stored/step';
import type { Stored } from '@/shared/schemas/stored';
import { type Appended, appendEntries, takingBack } from './appendEntries';
import { applyToStored, type Refused } from './applyToStored';
import { forget, recall } from './exchangedByStep';
import { readStepContent } from './readStepContent';

/** A document that undo or redo has moved, and the place in it where all that moved lies. */
export interface MovedDocument {
  readonly kind: Stored['kind'];
  readonly id: string;
  /** Empty where the whole document moved, or several of its fields. */
  readonly path: readonly (string | number)[];
}

export interface HistoryMove {
  readonly direction: 'undo' | 'redo';
  readonly tab: string;
  readonly at: number;
}

type HistoryMoved =
  | ({
      readonly state: 'moved';
      readonly label: string;
      readonly documents: readonly Stored[];
      readonly moved: readonly MovedDocument[];
      /** Entries of the step, which count again or no more. */
      readonly noted: readonly string[];
      readonly steps: readonly Step[];
    } & Appended)
  | { readonly state: 'nothing' }
  /** The step's content or its document cannot be read; the step is no longer offered. */
  | { readonly state: 'lost'; readonly label: string; readonly steps: readonly Step[] }
  | Refused;

/**
 * Undoes or redoes one step. Only the fields of that step move; what others changed since stays. Entries stay where
 * they are: others take them back, and those are taken back in their turn.
 */
export async function moveInHistory(
  tx: BackendTx,
  { registry, entryKinds }: Pick<StoreKinds, 'registry' | 'entryKinds'>,
  { direction, tab, at }: HistoryMove,
): Promise<HistoryMoved> {
  const steps = readSteps(await tx.all('steps'));
  const step = direction === 'undo' ? nextUndo(steps, tab) : nextRedo(steps, tab);
  if (step === null) return { state: 'nothing' };
  const replaced = async (to: Step): Promise<readonly Step[]> => {
    await tx.put('steps', [to]);
    return steps.map((other) => (other.seq === to.seq ? to : other));
  };

  const content = await readStepContent(tx, step.seq, registry);
  const changes = content?.changes.map((change) => towards(direction, change)) ?? null;
  const outcome =
    changes === null ? null : await applyToStored(tx, registry, changes, { at, revives: false });
  // A newer build can still move this step; this one may not touch its document.
  if (outcome?.state === 'refused' && outcome.why === 'newerDocument') return outcome;
  if (content === null || outcome === null || outcome.state === 'refused') {
    const lost = turnStep(steps, step, { state: 'lost', tab, revisions: step.revisions });
    return { state: 'lost', label: step.label, steps: await replaced(lost) };
  }

  const documents = outcome.applied.map(({ document }) => document);
  await tx.put('documents', documents);
  // What was here a moment ago is what the opposite move goes back to, edits of others included.
  const swapped = content.changes.map((change, index) => {
    const move = outcome.applied[index];
    if (move === undefined) return change;
    const left = move.found === null ? null : snapshotOf(move.found);
    const reached = snapshotOf(move.document);
    return direction === 'undo'
      ? { ...change, before: reached, after: left ?? change.after }
      : { ...change, before: left, after: reached };
  });
  const { noted = [], arrived = [], takers = [], met = [], ...rest } = content;
  const back =
    direction === 'redo'
      ? takers.map((id) => takingBack(entryKinds, id))
      : [
          ...noted.map((id) => takingBack(entryKinds, id)),
          ...arrived.map((id) => takingBack(entryKinds, id, 'arrivalUndone')),
        ];
  const appended = await appendEntries(tx, entryKinds, back, at);
  const nowMet = direction === 'undo' ? await forget(tx, met) : met;
  if (direction === 'redo') await recall(tx, met);
  const nowTakers = direction === 'undo' ? appended.entries.map(({ id }) => id) : [];
  await tx.put('contents', [
    {
      ...rest,
      changes: swapped,
      ...(noted.length === 0 ? {} : { noted }),
      ...(arrived.length === 0 ? {} : { arrived }),
      ...(nowMet.length === 0 ? {} : { met: nowMet }),
      ...(nowTakers.length === 0 ? {} : { takers: nowTakers }),
    },
  ]);
  const moved = turnStep(steps, step, {
    state: direction === 'undo' ? 'undone' : 'done',
    tab,
    revisions: Object.fromEntries(documents.map(({ id, revision }) => [id, revision])),
  });
  return {
    state: 'moved',
    label: step.label,
    documents,
    moved: outcome.applied.map(({ found, document: { kind, id, body } }) => ({
      kind,
      id,
      path: changedPath(found?.body, body),
    })),
    noted,
    ...appended,
    steps: await replaced(moved),
  };
}

/** Undoing the making of a document deletes it; the tombstone keeps what it held. */
const towards = (direction: HistoryMove['direction'], change: DocumentChange): DocumentChange =>
  direction === 'redo'
    ? change
    : { ...change, before: change.after, after: change.before ?? { ...change.after, deleted: true } };
