import type { BackendTable, BackendTx, Row } from '@/app/_backend/backend';
import type { BackendConnection } from '@/app/_backend/backendConnection';
import type { SaveFailure } from '@/app/_backend/saveFailure';
import { isPlainObject } from '@/lib/merging/sameValue';
import { fileIdsIn } from '@/lib/stored/fileIds';
import { sha256InSlices } from '@/lib/stored/sha256InSlices';
import { bytesOfFile, readStoredFile } from '@/lib/stored/storedFile';
import { withFileIds } from '@/lib/stored/withFileIds';
import { sha256Schema } from '@/shared/schemas/happened';

/** How settling went. */
interface SettledFiles {
  readonly renamed: boolean;
  /** Why the rest keeps its old names until the next visit; null where all are renamed. */
  readonly why: SaveFailure | null;
}

/** Many small pictures share a look at the records; of large ones each is renamed by itself. */
const BATCH_BYTES = 4 * 1024 * 1024;

/**
 * Keeps every file under the SHA-256 of its bytes, the same bytes once, and names it so wherever it is named. Each is
 * worked out in slices, with the store and the page free between them. A few are renamed at a time, so that neither memory
 * nor disk ever holds all of them twice; what is renamed stays so, and the next visit goes on with the others.
 */
export async function settleFiles(
  connection: Pick<BackendConnection, 'attempt'>,
  pause: () => Promise<void>,
): Promise<SettledFiles> {
  let renamed = false;
  const keys = await connection.attempt('read', async (tx) => tx.keys('files'));
  if (!keys.ok) return { renamed, why: keys.problem };
  const waiting = keys.value.filter(isOldName);
  while (waiting.length > 0) {
    const names = new Map<string, string>();
    for (let bytes = 0; waiting.length > 0 && bytes < BATCH_BYTES; ) {
      const id = waiting.shift() ?? '';
      const rows = await connection.attempt('read', async (tx) => tx.get('files', [id]));
      if (!rows.ok) return { renamed, why: rows.problem };
      const file = readStoredFile(rows.value[0]);
      const content = file === null ? null : await bytesOfFile(file);
      // A file that nothing can read keeps its name.
      if (content === null) continue;
      names.set(id, await sha256InSlices(content, pause));
      bytes += content.length;
    }
    if (names.size === 0) continue;
    const batch = await connection.attempt('writeStrict', (tx) => renameFiles(tx, names));
    if (!batch.ok) return { renamed, why: batch.problem };
    renamed = true;
  }
  return { renamed, why: null };
}

/** Renames files, and names them anew wherever anything names them. Papers name theirs by its SHA-256 from the first. */
async function renameFiles(tx: BackendTx, names: ReadonlyMap<string, string>): Promise<void> {
  const files = (await tx.get('files', [...names.keys()])).flatMap((row) => readStoredFile(row) ?? []);
  await tx.put(
    'files',
    files.map((file) => ({ ...file, id: names.get(file.id) ?? file.id })),
  );
  await tx.drop(
    'files',
    files.map(({ id }) => id),
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
