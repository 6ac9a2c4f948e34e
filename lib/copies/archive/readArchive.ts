import type { ArchiveEntry } from './archiveEntry';
import type { ByteSource } from './byteSource';
import { readDirectory } from './readDirectory';
import { walkArchive } from './walkArchive';

/** What an archive lists and what lies in it, whether or not the two agree. */
interface ArchiveReading {
  /** In the order of their places; the directory's word first where it differs from what stands before the bytes. */
  readonly entries: readonly ArchiveEntry[];
  /** The end of the archive is not there. */
  readonly endsEarly: boolean;
}

/** @returns null where the source is no ZIP archive, whole or cut short. */
export async function readArchive(source: ByteSource): Promise<ArchiveReading | null> {
  const directory = await readDirectory(source);
  const listed = directory?.entries ?? [];
  const found = await walkArchive(source, listed);
  if (directory === null && found === null) return null;
  const entries = [...listed, ...(found ?? [])].toSorted((one, other) => one.at - other.at);
  const known = new Set<string>();
  return {
    entries: entries.filter((entry) => {
      const key = JSON.stringify(entry);
      const isNew = !known.has(key);
      known.add(key);
      return isNew;
    }),
    endsEarly: directory === null,
  };
}
