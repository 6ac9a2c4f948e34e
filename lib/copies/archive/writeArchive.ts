import { crc32 } from '@/lib/picture/crc32';
import { PIECE_BYTES } from './byteSource';
import { centralHeader, endOfDirectory, localHeader, type WrittenEntry } from './zipRecords';

/** Something to put into an archive, in pieces that lie in memory while it is written and not longer. */
export interface EntryToWrite {
  readonly name: string;
  readonly pieces: readonly Uint8Array[];
}

/** What an archive of plain 32-bit places can hold: 65,535 entries, and just under 4 GiB. */
export const MOST_ENTRIES = 0xffff;
export const MOST_ARCHIVE_BYTES = 0xffffffff - 64 * 1024 * 1024;

/**
 * Writes a ZIP archive piece by piece, one entry after the other. Everything is stored as it is, with its size before
 * it, so that a reader needs no directory and damage stays where it happens.
 *
 * @param pause taken between pieces, so that whoever shares the thread gets a turn
 */
export async function* writeArchive(
  entries: AsyncIterable<EntryToWrite>,
  { madeAt, pause }: { readonly madeAt: number; readonly pause: () => Promise<void> },
): AsyncGenerator<Uint8Array> {
  const written: WrittenEntry[] = [];
  let at = 0;
  for await (const { name, pieces } of entries) {
    let crc = 0;
    let bytes = 0;
    for (const piece of parted(pieces)) {
      crc = crc32(piece, crc);
      bytes += piece.length;
      await pause();
    }
    const entry = { name, crc, bytes, at };
    const header = localHeader(entry, madeAt);
    yield header;
    yield* pieces;
    written.push(entry);
    at += header.length + bytes;
  }
  const directory = written.map((entry) => centralHeader(entry, madeAt));
  yield* directory;
  const length = directory.reduce((sum, { length: own }) => sum + own, 0);
  yield endOfDirectory(written.length, length, at);
}

function* parted(pieces: readonly Uint8Array[]): Generator<Uint8Array> {
  for (const piece of pieces) {
    for (let at = 0; at < piece.length; at += PIECE_BYTES) yield piece.subarray(at, at + PIECE_BYTES);
  }
}
