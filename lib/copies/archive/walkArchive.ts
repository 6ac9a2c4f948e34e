import type { ArchiveEntry } from './archiveEntry';
import type { ByteSource } from './byteSource';
import { entryName } from './entryName';
import { BEYOND, LOCAL, LOCAL_BYTES } from './zipRecords';

/** Longer names are nobody's. */
const LONGEST_NAME = 1024;

/**
 * Goes through an archive from its beginning by what stands before each entry; it needs no directory. Where the way is
 * broken it goes on at the next place the directory names.
 *
 * @param listed what the directory says
 * @returns null where neither leads to an entry
 */
export async function walkArchive(
  source: ByteSource,
  listed: readonly ArchiveEntry[],
): Promise<readonly ArchiveEntry[] | null> {
  const starts = [...new Set(listed.map(({ at }) => at))].toSorted((one, other) => one - other);
  const been = new Set<number>();
  const entries: ArchiveEntry[] = [];
  // Where one has been it stays: what lies before it is never looked at again.
  let next = 0;
  const nextStart = (): number | undefined => {
    while (next < starts.length && been.has(starts[next] ?? 0)) next += 1;
    return starts[next];
  };
  let at: number | undefined = 0;
  while (at !== undefined) {
    been.add(at);
    const entry = await entryAt(source, at);
    if (entry !== null) entries.push(entry);
    // Where the size stands behind the bytes, only the directory leads on.
    const after: number | null = entry === null || entry.packed === null ? null : entry.from + entry.packed;
    at = after !== null && after < source.size && !been.has(after) ? after : nextStart();
  }
  return entries.length > 0 || listed.length > 0 ? entries : null;
}

async function entryAt(source: ByteSource, at: number): Promise<ArchiveEntry | null> {
  const bytes = await source.read(at, at + LOCAL_BYTES + LONGEST_NAME);
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.length);
  if (view.byteLength < LOCAL_BYTES || view.getUint32(0, true) !== LOCAL) return null;
  const flags = view.getUint16(6, true);
  const nameLength = view.getUint16(26, true);
  if (nameLength > LONGEST_NAME || LOCAL_BYTES + nameLength > view.byteLength) return null;
  const packed = view.getUint32(18, true);
  const sizesFollow = (flags & 8) !== 0 && packed === 0;
  if (!sizesFollow && packed === BEYOND) return null;
  return {
    name: entryName(view, LOCAL_BYTES, nameLength),
    isEncrypted: (flags & 1) === 1,
    method: view.getUint16(8, true),
    from: at + LOCAL_BYTES + nameLength + view.getUint16(28, true),
    packed: sizesFollow ? null : packed,
    bytes: sizesFollow ? null : view.getUint32(22, true),
    crc: sizesFollow ? null : view.getUint32(14, true),
    at,
    hasHeader: true,
  };
}
