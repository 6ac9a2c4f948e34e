import type { PendingEdit } from '@/lib/stored/pendingEdits';
import { type KeptFile, readKeptFile } from '@/lib/stored/storedFile';
import type { ShelfConnection } from './databaseConnection';

/** @returns a reader of kept files, and of those that wait to be kept. */
export const fileReader =
  (connection: ShelfConnection, pending: () => readonly PendingEdit[]) =>
  async (id: string): Promise<KeptFile | null> => {
    const waiting = pending()
      .flatMap(({ files }) => files ?? [])
      .find((file) => file.id === id);
    if (waiting !== undefined) return waiting;
    const found = await connection.attempt('read', async (tx) => tx.get('files', [id]));
    return found.ok ? readKeptFile(found.value[0]) : null;
  };
