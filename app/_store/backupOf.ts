import type { UnreadableRecord } from '@/lib/stored/readDocument';
import { BACKUP_FORMAT, type Backup, type Stored } from '@/shared/schemas/stored';

/**
 * Everything the maker has, as it is shown: deleted documents, edits that could not be kept and records nothing
 * can read are in it too. Made from memory, so that it can be had when the store fails.
 */
export const backupOf = (
  shown: ReadonlyMap<string, Stored>,
  unreadable: readonly UnreadableRecord[],
  at: number,
): Backup => ({
  format: BACKUP_FORMAT,
  formatVersion: 1,
  exportedAt: at,
  documents: [...shown.values()],
  unreadable: unreadable.map(({ raw }) => raw),
  files: [],
});
