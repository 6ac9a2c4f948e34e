import type { BackendTx, Row } from '@/app/_backend/backend';
import { drawnId } from '@/app/_transactions/deviceIdentity';
import { markFilled } from '@/app/_transactions/fillEmpty';
import { keepUnreadable } from '@/app/_transactions/keepUnreadable';
import { noteLastCopy } from '@/app/_transactions/lastCopy';
import { setAside } from '@/app/_transactions/setAside';
import { isPlainObject } from '@/lib/merging/sameValue';
import { asKept } from '@/lib/stored/asKept';
import { fileIdsIn } from '@/lib/stored/fileIds';
import { idSchema } from '@/shared/schemas/basics';
import { z } from '@/shared/schemas/z';
import type { LostStore } from './lostStore';
import type { TabState } from './tabState';

const KEY = 'store';
const rowSchema = z.strictObject({ key: z.literal(KEY), id: idSchema });

type Held = Pick<
  TabState,
  'documents' | 'entries' | 'papers' | 'unreadable' | 'unreadableHappened' | 'aside' | 'lastCopy' | 'storeId'
>;

/** @returns which store this is; null for one that this build has not written to. */
export async function readStoreId(tx: BackendTx): Promise<string | null> {
  const row = rowSchema.safeParse((await tx.get('meta', [KEY]))[0]);
  return row.success ? row.data.id : null;
}

/**
 * Sees to it that a write goes into the store the page was read from. A browser that deletes it opens an empty one under
 * the same name: then all that the page holds is written back first, in the transaction of the write.
 *
 * @returns which store it is, and what is lost; null where it is the same
 */
export async function ensureSameStore(
  tx: BackendTx,
  held: Held,
  at: number,
): Promise<{ readonly storeId: string; readonly lost: LostStore | null }> {
  const here = await readStoreId(tx);
  const storeId = here ?? drawnId();
  if (here === null) await tx.put('meta', [{ key: KEY, id: storeId }]);
  const isAnother = storeId !== held.storeId && [held.documents, held.entries, held.papers].some(isFilled);
  if (!isAnother || !(await writeBack(tx, held, at))) return { storeId, lost: null };
  const there = new Set(await tx.keys('files'));
  const named = new Set([
    ...fileIdsIn([...held.documents.values(), ...held.entries.values()]),
    ...[...held.papers.values()].flatMap(({ file }) => file?.sha256 ?? []),
  ]);
  return { storeId, lost: { files: [...named].filter((id) => !there.has(id)).length } };
}

// Helpers

const isFilled = ({ size }: ReadonlyMap<string, unknown>): boolean => size > 0;

/**
 * The device counts on under another id: which numbers it gave last is known no more.
 *
 * @returns whether anything was missing
 */
async function writeBack(tx: BackendTx, held: Held, at: number): Promise<boolean> {
  const documents = [...held.documents.values()];
  const rows = await tx.get(
    'documents',
    documents.map(({ id }) => id),
  );
  const behind = documents.filter(({ revision }, index) => isBehind(rows[index], revision));
  await tx.put('documents', behind);
  const entries = await putMissing(
    tx,
    'entries',
    [...held.entries.values()].map((entry) => asKept(entry)),
  );
  const papers = await putMissing(
    tx,
    'papers',
    [...held.papers.values()].map((paper) => asKept(paper)),
  );
  if (behind.length + entries + papers === 0) return false;
  const kept = await keepUnreadable(
    tx,
    [...held.unreadable.values(), ...held.unreadableHappened.values()].map(({ raw }) => raw),
  );
  await setAside(tx, [...held.aside.map(({ raw }) => raw), ...kept.aside], at);
  await markFilled(tx, at);
  if (held.lastCopy !== null) await noteLastCopy(tx, held.lastCopy);
  return true;
}

/** Another tab may have written back what it held, and may have held less. */
const isBehind = (row: unknown, revision: number): boolean =>
  row === undefined || (isPlainObject(row) && typeof row.revision === 'number' && row.revision < revision);

async function putMissing(
  tx: BackendTx,
  table: 'entries' | 'papers',
  items: readonly (Row & { readonly id: string })[],
): Promise<number> {
  const there = new Set(await tx.keys(table));
  const missing = items.filter(({ id }) => !there.has(id));
  await tx.put(table, missing);
  return missing.length;
}
