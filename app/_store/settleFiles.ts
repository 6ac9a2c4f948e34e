import { fileIdsIn } from '@/lib/stored/fileIds';
import { isPlainObject } from '@/lib/stored/sameValue';
import { sha256InSlices } from '@/lib/stored/sha256InSlices';
import { readStoredFile } from '@/lib/stored/storedFile';
import { withFileIds } from '@/lib/stored/withFileIds';
import { sha256Schema } from '@/shared/schemas/happened';
import type { BackendTable, BackendTx, Row } from './backend';
import type { BackendConnection } from './backendConnection';

/**
 * Keeps every file under the SHA-256 of its bytes, the same bytes once, and names it so wherever it is named. Each is
 * worked out in slices, with the store and the page free between them; then all are renamed in one transaction.
 *
 * @returns whether anything was renamed; what could not be today can be tomorrow
 */
export async function settleFiles(
  connection: Pick<BackendConnection, 'attempt'>,
  pause: () => Promise<void>,
): Promise<boolean> {
  const keys = await connection.attempt('read', async (tx) => tx.keys('files'));
  if (!keys.ok) return false;
  const names = new Map<string, string>();
  for (const id of keys.value.filter(isOldName)) {
    const rows = await connection.attempt('read', async (tx) => tx.get('files', [id]));
    const file = rows.ok ? readStoredFile(rows.value[0]) : null;
    // A file that nothing can read keeps its name.
    if (file !== null) names.set(id, await sha256InSlices(file.content, pause));
  }
  if (names.size === 0) return false;
  const renamed = await connection.attempt('writeStrict', (tx) => renameFiles(tx, names));
  return renamed.ok;
}

/** Renames files, and names them anew wherever anything names them. Papers name theirs by its SHA-256 from the first. */
async function renameFiles(tx: BackendTx, names: ReadonlyMap<string, string>): Promise<void> {
  const rows = (await tx.get('files', [...names.keys()])).filter((row) => isPlainObject(row));
  const named = rows.map((row) => ({ ...row, id: names.get(String(row.id)) ?? row.id }));
  await tx.put('files', named);
  await tx.drop(
    'files',
    rows.map(({ id }) => String(id)),
  );
  for (const table of naming) {
    const touched = (await tx.all(table)).filter(
      (row): row is Row => isPlainObject(row) && [...fileIdsIn([row])].some((id) => names.has(id)),
    );
    await tx.put(
      table,
      touched.flatMap((row) => {
        const now = withFileIds(row, names);
        return isPlainObject(now) ? [table === 'documents' ? moved(now) : now] : [];
      }),
    );
  }
}

// Helpers

const naming: readonly BackendTable[] = ['documents', 'contents', 'aside', 'exchanged'];

const isOldName = (key: unknown): key is string =>
  typeof key === 'string' && !sha256Schema.safeParse(key).success;

/** Other tabs take in a document that moved on. */
const moved = (row: Row): Row =>
  typeof row.revision === 'number' ? { ...row, revision: row.revision + 1 } : row;
