import { fileIdsIn } from '@/lib/stored/fileIds';
import type { StoredFile } from '@/lib/stored/storedFile';
import type { Backup } from '@/shared/schemas/stored';
import { toBase64 } from './base64';

/** A backup with files, and what is not in it. */
export interface FullBackup {
  readonly backup: Backup;
  /** Files that are named and not in it: too large together, or not to be had. */
  readonly leftOut: number;
}

/** Browsers hold text of some 500 million characters; a third is lost to the packing. */
const MOST_BYTES = 250_000_000;

/** Adds the files that documents name to a backup, as far as one text can hold them. */
export async function fullBackup(
  backup: Backup,
  readFile: (id: string) => Promise<StoredFile | null>,
): Promise<FullBackup> {
  const files: Backup['files'] = [];
  let bytes = 0;
  let leftOut = 0;
  for (const id of fileIdsIn([...backup.documents, ...backup.unreadable])) {
    const file = await readFile(id);
    if (file === null || bytes + file.content.length > MOST_BYTES) {
      leftOut += 1;
      continue;
    }
    bytes += file.content.length;
    files.push({ id, name: file.name, base64: toBase64(file.content) });
  }
  return { backup: { ...backup, files }, leftOut };
}
