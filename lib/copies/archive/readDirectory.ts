import type { ArchiveEntry } from './archiveEntry';
import type { ByteSource } from './byteSource';
import { entryName } from './entryName';
import { BEYOND, CENTRAL, CENTRAL_BYTES, END, END_BYTES, LOCAL, LOCAL_BYTES } from './zipRecords';

/** A comment of 65,535 bytes may stand behind the end. */
const TAIL_BYTES = 0xffff + END_BYTES;
/** A directory of 65,535 entries with names like ours has 8 MB. */
const MOST_DIRECTORY_BYTES = 64 * 1024 * 1024;

/** @returns what the directory at the end of an archive lists, as far as it can be read; null where there is none. */
export async function readDirectory(
  source: ByteSource,
): Promise<{ readonly entries: readonly ArchiveEntry[] } | null> {
  const tailAt = Math.max(0, source.size - TAIL_BYTES);
  const tail = viewOf(await source.read(tailAt, source.size));
  for (let at = tail.byteLength - END_BYTES; at >= 0; at -= 1) {
    if (tail.getUint32(at, true) !== END) continue;
    const from = tail.getUint32(at + 16, true);
    const to = Math.min(from + tail.getUint32(at + 12, true), tailAt + at);
    // A directory that is not where it should be leaves what is found on the way.
    if (from >= to || to - from > MOST_DIRECTORY_BYTES) return { entries: [] };
    return { entries: await listed(source, viewOf(await source.read(from, to))) };
  }
  return null;
}

async function listed(source: ByteSource, directory: DataView): Promise<readonly ArchiveEntry[]> {
  const entries: ArchiveEntry[] = [];
  let at = 0;
  while (at + CENTRAL_BYTES <= directory.byteLength && directory.getUint32(at, true) === CENTRAL) {
    const word = (offset: number) => directory.getUint16(at + offset, true);
    const double = (offset: number) => directory.getUint32(at + offset, true);
    const nameLength = word(28);
    const next = at + CENTRAL_BYTES + nameLength + word(30) + word(32);
    if (next > directory.byteLength) break;
    const start = double(42);
    const sizes = [double(20), double(24)] as const;
    const name = entryName(directory, at + CENTRAL_BYTES, nameLength);
    // Beyond 4 GiB nothing of ours lies, and no picture is so large.
    if (start !== BEYOND && !sizes.includes(BEYOND)) {
      const entry = {
        name,
        isEncrypted: (word(8) & 1) === 1,
        method: word(10),
        packed: sizes[0],
        bytes: sizes[1],
        crc: double(16),
        at: start,
      };
      // Both as the local header has it and as ours are written: one of them may be damaged.
      const local = viewOf(await source.read(start, start + LOCAL_BYTES + nameLength));
      const isThere = local.byteLength === LOCAL_BYTES + nameLength && local.getUint32(0, true) === LOCAL;
      const hasHeader = isThere && entryName(local, LOCAL_BYTES, nameLength) === name;
      const extra = isThere ? local.getUint16(28, true) : 0;
      const plain = start + LOCAL_BYTES + nameLength;
      entries.push({ ...entry, from: plain + extra, hasHeader });
      if (extra > 0) entries.push({ ...entry, from: plain, hasHeader });
    }
    at = next;
  }
  return entries;
}

const viewOf = (bytes: Uint8Array): DataView => new DataView(bytes.buffer, bytes.byteOffset, bytes.length);
