import type { Entry } from '@/shared/schemas/happened';
import type { Stored } from '@/shared/schemas/stored';
import { applyChange } from './applyChange';
import { type DocumentChange, snapshotOf } from './documentChange';
import { COALESCE_MS } from './recordStep';
import type { StoredFile } from './storedFile';

/** An edit that is shown but not yet kept. */
export interface PendingEdit {
  readonly label: string;
  /** When it was made, in milliseconds since 1970. */
  readonly at: number;
  /** When the first of the edits was made that this one is made of; where there was but one, `at`. */
  readonly since?: number;
  readonly coalesceKey?: string;
  readonly changes: readonly DocumentChange[];
  /** What happened with it, under ids that hold only until the write gives others. */
  readonly entries?: readonly Entry[];
  /** Files that the changes name, kept with them or not at all. */
  readonly files?: readonly StoredFile[];
  /** What a store starts with: dropped where the store holds anything by the time it is written. */
  readonly isFirst?: true;
}

/** Whether a write must have reached the disk before it is called kept: files, and what is tapped at a stall, where a battery may end at any moment. */
export const mustReachDisk = ({ files, entries = [] }: PendingEdit): boolean =>
  files !== undefined || entries.some(({ kind }) => kind === 'stallTap' || kind === 'takeBack');

/** Whether a body of a kind can be read by its schema. */
type BodyFits = (kind: Stored['kind'], body: unknown) => boolean;

/**
 * Puts an edit behind those still waiting, or into the last of them where both edit the same field.
 *
 * @param waiting edits no write has taken up yet
 */
export function addPending(waiting: readonly PendingEdit[], edit: PendingEdit): readonly PendingEdit[] {
  const last = waiting.at(-1);
  if (last === undefined || !goesOn(last, edit)) return [...waiting, edit];
  const changes = edit.changes.map((change) => ({
    ...change,
    before: last.changes.find(({ id }) => id === change.id)?.before ?? null,
  }));
  return [...waiting.slice(0, -1), { ...edit, since: last.since ?? last.at, changes }];
}

/** @returns the kept documents with the waiting edits laid over them, as the screen shows them. */
export function overlayPending(
  kept: ReadonlyMap<string, Stored>,
  pending: readonly PendingEdit[],
  bodyFits: BodyFits,
): ReadonlyMap<string, Stored> {
  const shown = new Map(kept);
  for (const { at, changes } of pending) {
    for (const change of changes) {
      shown.set(change.id, changedDocument(shown.get(change.id) ?? null, change, at, bodyFits));
    }
  }
  return shown;
}

function changedDocument(
  found: Stored | null,
  change: DocumentChange,
  at: number,
  bodyFits: BodyFits,
): Stored {
  const { after } = applyChange(change, found === null ? null : snapshotOf(found), {
    fits: (body) => bodyFits(change.kind, body),
    revives: true,
  });
  return {
    id: change.id,
    kind: change.kind,
    version: after.version,
    revision: (found?.revision ?? 0) + 1,
    updatedAt: at,
    ...(after.deleted ? { deletedAt: at } : {}),
    body: after.body,
  };
}

const goesOn = (last: PendingEdit, edit: PendingEdit): boolean =>
  last.coalesceKey !== undefined &&
  last.coalesceKey === edit.coalesceKey &&
  edit.at >= last.at &&
  edit.at - last.at <= COALESCE_MS &&
  last.changes.length === edit.changes.length &&
  edit.changes.every(({ id, before }) => before !== null && last.changes.some((change) => change.id === id));
