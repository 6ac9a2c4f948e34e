import type { BackendTx } from '@/app/_backend/backend';
import type { UncountedEntry } from '@/lib/stored/newEntries';
import type { EntryRegistry } from '@/lib/stored/registry';
import { readSteps } from '@/lib/stored/step';
import type { Stored } from '@/shared/schemas/stored';
import { appendEntries, nothingAppended } from './appendEntries';
import { commitEdit } from './commitEdit';

/** Mark of the first filling, so that a store its owner has emptied is not filled again. */
const FILLED = 'filled';

/** @returns whether the store has never held anything. */
export async function isEmpty(tx: BackendTx): Promise<boolean> {
  const [filled] = await tx.get('meta', [FILLED]);
  const present = await tx.all('documents');
  return filled === undefined && present.length === 0;
}

/**
 * Puts the first documents into a store that has never held any. The look and the filling share a transaction,
 * so two tabs opened at once fill it once.
 *
 * @returns whether they were put in
 */
export async function fillEmpty(
  tx: BackendTx,
  documents: readonly Stored[],
  at: number,
  noted: { readonly entryKinds: EntryRegistry; readonly entries: readonly UncountedEntry[] } | null = null,
): Promise<boolean> {
  if (!(await isEmpty(tx))) return false;
  await tx.put('documents', documents);
  if (noted !== null) await appendEntries(tx, noted.entryKinds, noted.entries, at);
  await markFilled(tx, at);
  return true;
}

/** Writes first documents that could not be kept when they were shown, unless another tab has filled the store since. */
export async function fillLater(
  tx: BackendTx,
  kinds: Parameters<typeof commitEdit>[1],
  edit: Parameters<typeof commitEdit>[2],
): ReturnType<typeof commitEdit> {
  if (await isEmpty(tx)) return commitEdit(tx, kinds, edit);
  const steps = readSteps(await tx.all('steps'));
  return { state: 'written', documents: [], steps, overwritten: [], ...nothingAppended };
}

export const markFilled = (tx: BackendTx, at: number): PromiseLike<void> =>
  tx.put('meta', [{ key: FILLED, at }]);
