import type { BackendTx, Row } from '@/app/_backend/backend';
import { type Erasure, planErasure } from '@/lib/erasing/planErasure';
import { isPlainObject } from '@/lib/merging/sameValue';
import { readDocument } from '@/lib/stored/readDocument';
import { readEntry } from '@/lib/stored/readEntry';
import type { StoreKinds } from '@/lib/stored/registry';
import { readStoredFile } from '@/lib/stored/storedFile';
import { paperSchema } from '@/shared/schemas/happened';
import { dropUnusedFiles } from './dropUnusedFiles';
import { noteErasure } from './lastErasure';

interface ErasureToWrite {
  readonly customerId: string;
  /** YYYY-MM-DD */
  readonly day: string;
  readonly at: number;
}

/** What was erased, and what still names the customer. */
type Erased = Pick<Erasure, 'papersKept' | 'stillNamed'> & {
  /** Ids of what was written. */
  readonly ids: readonly string[];
};

/**
 * Erases a customer wherever records hold it: drafts, entries, steps of the history and what they would go back to, bodies
 * kept for other devices, records set aside, files that nothing names any more. Nothing of it can be undone.
 *
 * @returns null where there is no such customer
 */
export async function eraseRecords(
  tx: BackendTx,
  kinds: StoreKinds,
  { customerId, day, at }: ErasureToWrite,
): Promise<Erased | null> {
  const erasure = planErasure(customerId, await recordsHere(tx, kinds), day);
  if (erasure === null) return null;
  const { drafts, entries, papersKept, stillNamed, rewrite } = erasure;
  await tx.put(
    'documents',
    drafts.map((draft) => ({ ...draft, revision: draft.revision + 1, updatedAt: at })),
  );
  await tx.put(
    'entries',
    entries.map(({ kept: _, ...entry }) => entry),
  );
  const ids = new Set(drafts.map(({ id }) => id));
  await emptyHistory(tx, ids, rewrite);
  await forgetBodies(tx, ids);
  await dropSetAside(tx, new Set([...ids, ...entries.map(({ id }) => id)]));
  await dropUnusedFiles(tx);
  await renameFiles(tx, rewrite);
  await noteErasure(tx, at);
  return { papersKept, stillNamed, ids: [...ids, ...entries.map(({ id }) => id)] };
}

// Helpers

async function recordsHere(
  tx: BackendTx,
  { registry, entryKinds }: StoreKinds,
): Promise<Parameters<typeof planErasure>[1]> {
  const [documents, entries, papers] = [
    await tx.all('documents'),
    await tx.all('entries'),
    await tx.all('papers'),
  ];
  return {
    drafts: documents.flatMap((row) => {
      const reading = readDocument(row, registry);
      return reading.state === 'readable' ? [reading.document] : [];
    }),
    entries: entries.flatMap((row) => {
      const reading = readEntry(row, entryKinds);
      return reading.state === 'readable' ? [reading.entry] : [];
    }),
    papers: papers.flatMap((row) => {
      // Told by what stands around it, whether or not a build can read what it says.
      const paper = paperSchema.safeParse(row);
      return paper.success ? [paper.data] : [];
    }),
  };
}

/** A step that moved any of it can be neither undone nor redone, and what others are called loses the names. */
async function emptyHistory(
  tx: BackendTx,
  ids: ReadonlySet<string>,
  rewrite: Erasure['rewrite'],
): Promise<void> {
  const touched = (await tx.all('contents')).flatMap((row) =>
    isRow(row) && typeof row.seq === 'number' && touches(row, ids) ? [row.seq] : [],
  );
  await tx.drop('contents', touched);
  const steps = (await tx.all('steps')).filter(isRow).map((step): Row => {
    const label = typeof step.label === 'string' ? rewrite(step.label) : step.label;
    const isTouched = typeof step.seq === 'number' && touched.includes(step.seq);
    return isTouched ? { ...step, label: 'Something erased', state: 'lost' } : { ...step, label };
  });
  await tx.put('steps', steps);
}

function touches(content: Row, ids: ReadonlySet<string>): boolean {
  return [content.changes, content.met].some(
    (list) =>
      Array.isArray(list) &&
      list.some((part: unknown) => isPlainObject(part) && typeof part.id === 'string' && ids.has(part.id)),
  );
}

/** The hashes stay: an earlier state that comes back is known as earlier. */
async function forgetBodies(tx: BackendTx, ids: ReadonlySet<string>): Promise<void> {
  const rows = (await tx.get('exchanged', [...ids])).filter(isRow);
  await tx.put(
    'exchanged',
    rows.map((row) => ({ ...row, bodies: [] })),
  );
}

async function dropSetAside(tx: BackendTx, ids: ReadonlySet<string>): Promise<void> {
  const gone = (await tx.all('aside')).flatMap((row) => {
    if (!isRow(row) || typeof row.key !== 'string' || !isPlainObject(row.raw)) return [];
    return typeof row.raw.id === 'string' && ids.has(row.raw.id) ? [row.key] : [];
  });
  await tx.drop('aside', gone);
}

/** Files that stay, such as the receipt of an expense, may be called after the customer. Those of papers went out so. */
async function renameFiles(tx: BackendTx, rewrite: Erasure['rewrite']): Promise<void> {
  const ofPapers = new Set(
    (await tx.all('papers')).flatMap((row) =>
      isRow(row) && isPlainObject(row.file) ? [row.file.sha256] : [],
    ),
  );
  const ids = (await tx.keys('files')).filter(
    (id): id is string => typeof id === 'string' && !ofPapers.has(id),
  );
  for (const id of ids) {
    const [row] = await tx.get('files', [id]);
    const file = readStoredFile(row);
    if (file !== null && rewrite(file.name) !== file.name)
      await tx.put('files', [{ ...file, name: rewrite(file.name) }]);
  }
}

const isRow = (row: unknown): row is Row => isPlainObject(row);
