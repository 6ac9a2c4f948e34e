import type { BackendTx } from '@/app/_backend/backend';
import type { FieldPath } from '@/lib/merging/mergeValues';
import { type DocumentChange, snapshotOf } from '@/lib/stored/documentChange';
import type { EntryToWrite } from '@/lib/stored/newEntries';
import type { StoreKinds } from '@/lib/stored/registry';
import type { Step } from '@/lib/stored/step';
import type { StoredFile } from '@/lib/stored/storedFile';
import type { Stored } from '@/shared/schemas/stored';
import { type Appended, appendEntries } from './appendEntries';
import { type AppliedToStored, applyToStored, type Refused } from './applyToStored';
import { enterHistory } from './enterHistory';

/** A field that was set elsewhere meanwhile and has now been overwritten; undo brings the other value back. */
export interface Overwritten {
  readonly id: string;
  readonly kind: Stored['kind'];
  /** Empty for the document as a whole. */
  readonly path: FieldPath;
}

/** What a write left in the store. */
export interface Written extends Appended {
  readonly state: 'written';
  readonly documents: readonly Stored[];
  readonly steps: readonly Step[];
  readonly overwritten: readonly Overwritten[];
}

interface EditToCommit {
  readonly label: string;
  readonly tab: string;
  readonly at: number;
  readonly since?: number;
  readonly coalesceKey?: string;
  readonly changes: readonly DocumentChange[];
  readonly entries?: readonly EntryToWrite[];
  readonly files?: readonly StoredFile[];
}

/** Writes an edit, what happened with it and its step of history, merged with whatever other tabs have written since. */
export async function commitEdit(
  tx: BackendTx,
  { registry, entryKinds }: Pick<StoreKinds, 'registry' | 'entryKinds'>,
  edit: EditToCommit,
): Promise<Written | Refused> {
  const outcome = await applyToStored(tx, registry, edit.changes, { at: edit.at, revives: true });
  if (outcome.state === 'refused') return outcome;
  const overwritten = outcome.applied.flatMap(overwrittenFields);
  const documents = outcome.applied.map(({ document }) => document);
  if (edit.files !== undefined) await tx.put('files', edit.files);
  await tx.put('documents', documents);
  const appended = await appendEntries(tx, entryKinds, edit.entries ?? [], edit.at);
  const steps = await enterHistory(tx, {
    ...edit,
    noted: appended.entries.map(({ id }) => id),
    moves: outcome.applied.map(({ found, document }) => ({
      before: found === null ? null : snapshotOf(found),
      foundRevision: found?.revision ?? null,
      document,
    })),
    overwrote: overwritten.length > 0,
  });
  return { state: 'written', documents, steps, overwritten, ...appended };
}

const overwrittenFields = ({ document, conflicts }: AppliedToStored): readonly Overwritten[] =>
  conflicts.map((path) => ({ id: document.id, kind: document.kind, path }));
