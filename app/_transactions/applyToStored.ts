import type { BackendTx } from '@/app/_backend/backend';
import type { SaveFailure } from '@/app/_backend/saveFailure';
import type { FieldPath } from '@/lib/merging/mergeValues';
import { applyChange } from '@/lib/stored/applyChange';
import { type DocumentChange, snapshotOf } from '@/lib/stored/documentChange';
import { type LeftRecords, nothingLeft } from '@/lib/stored/leavingRecords';
import { readDocument } from '@/lib/stored/readDocument';
import { bodyFits, type Registry } from '@/lib/stored/registry';
import type { Stored } from '@/shared/schemas/stored';
import { keepLeft } from './settleRecords';

/** A document as it was found in the store and as the change leaves it. */
export interface AppliedToStored {
  readonly found: Stored | null;
  readonly document: Stored;
  readonly conflicts: readonly FieldPath[];
}

export interface Refused {
  readonly state: 'refused';
  readonly why: Extract<SaveFailure, 'newerDocument' | 'unreadableDocument'>;
}

/**
 * Applies changes to the documents as the store has them now, inside the caller's transaction. Either all of the
 * changes can be applied or the caller gets the reason. Writes none of the documents, only what leaves those of an earlier
 * version, which the caller is about to write over.
 */
export async function applyToStored(
  tx: BackendTx,
  registry: Registry,
  changes: readonly DocumentChange[],
  { at, revives }: { readonly at: number; readonly revives: boolean },
): Promise<{ readonly state: 'applied'; readonly applied: readonly AppliedToStored[] } | Refused> {
  const rows = await tx.get(
    'documents',
    changes.map(({ id }) => id),
  );
  const applied: AppliedToStored[] = [];
  const left: LeftRecords[] = [];
  for (const [index, change] of changes.entries()) {
    const found = readFound(rows[index], change, registry);
    if (found.state === 'refused') return found;
    left.push(found.left);
    const current = found.document === null ? null : snapshotOf(found.document);
    const { after, conflicts } = applyChange(change, current, {
      fits: (body) => bodyFits(registry, change.kind, body),
      revives,
    });
    const deletedAt = after.deleted ? (found.document?.deletedAt ?? at) : undefined;
    applied.push({
      found: found.document,
      conflicts,
      document: {
        id: change.id,
        kind: change.kind,
        version: after.version,
        revision: (found.document?.revision ?? 0) + 1,
        updatedAt: at,
        ...(deletedAt === undefined ? {} : { deletedAt }),
        body: after.body,
      },
    });
  }
  await keepLeft(tx, registry, left);
  return { state: 'applied', applied };
}

function readFound(
  row: unknown,
  change: DocumentChange,
  registry: Registry,
): { readonly state: 'found'; readonly document: Stored | null; readonly left: LeftRecords } | Refused {
  if (row === undefined) return { state: 'found', document: null, left: nothingLeft };
  const reading = readDocument(row, registry);
  if (reading.state === 'readable' && reading.document.kind === change.kind) {
    return { state: 'found', document: reading.document, left: reading.left };
  }
  const newer =
    reading.state === 'unreadable' && reading.findings.some(({ code }) => code === 'newerVersion');
  return { state: 'refused', why: newer ? 'newerDocument' : 'unreadableDocument' };
}
