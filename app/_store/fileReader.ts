import type { BackendConnection } from '@/app/_backend/backendConnection';
import type { PendingEdit } from '@/lib/stored/pendingEdits';
import { readStoredFile, type StoredFile } from '@/lib/stored/storedFile';

/** @returns a reader of kept files, and of those that wait to be kept. */
export const fileReader =
  (connection: BackendConnection, pending: () => readonly PendingEdit[]) =>
  async (id: string): Promise<StoredFile | null> => {
    const waiting = pending()
      .flatMap(({ files }) => files ?? [])
      .find((file) => file.id === id);
    if (waiting !== undefined) return waiting;
    const found = await connection.attempt('read', async (tx) => tx.get('files', [id]));
    return found.ok ? readStoredFile(found.value[0]) : null;
  };
