import { Inflate } from 'fflate';
import type { ArchiveEntry } from './archiveEntry';
import { type ByteSource, piecesOf } from './byteSource';
import { DEFLATED, STORED } from './zipRecords';

/** How an entry came out of its archive; what came before the trouble has been given out. */
export type Unpacking = 'whole' | 'cut' | 'damaged' | 'tooLarge' | 'packedOtherwise';

/**
 * Unpacks one entry piece by piece and gives each out. However little an entry says it holds, no more than `most`
 * bytes come out.
 *
 * @returns how it ended; `whole` says only that nothing was missing, not that the content is right
 */
export async function unpacked(
  source: ByteSource,
  entry: ArchiveEntry,
  most: number,
  give: (piece: Uint8Array) => void | Promise<void>,
): Promise<Unpacking> {
  if (entry.isEncrypted || (entry.method !== STORED && entry.method !== DEFLATED)) return 'packedOtherwise';
  if ((entry.bytes ?? 0) > most) return 'tooLarge';
  if (entry.method === STORED && entry.packed === null) return 'packedOtherwise';
  const to = entry.packed === null ? source.size : entry.from + entry.packed;
  const isCut = to > source.size;
  const end = Math.min(to, source.size);
  if (entry.method === STORED) {
    if (entry.packed !== null && entry.packed > most) return 'tooLarge';
    for await (const piece of piecesOf(source, entry.from, end)) await give(piece);
    return isCut ? 'cut' : 'whole';
  }
  return inflated(source, { from: entry.from, end }, most, give);
}

/** A small step: a piece of packed bytes can come out a thousand times as large. */
const PACKED_STEP = 16 * 1024;
/** So many packed bytes always give something, for a block has 64 KiB at most; else the end has been passed. */
const IDLE_BYTES = 256 * 1024;

async function inflated(
  source: ByteSource,
  { from, end }: { readonly from: number; readonly end: number },
  most: number,
  give: (piece: Uint8Array) => void | Promise<void>,
): Promise<Unpacking> {
  const out: Uint8Array[] = [];
  let bytes = 0;
  let idle = 0;
  const inflate = new Inflate((piece) => {
    if (piece.length > 0) out.push(piece);
  });
  for await (const piece of piecesOf(source, from, end)) {
    for (let at = 0; at < piece.length && idle < IDLE_BYTES; at += PACKED_STEP) {
      const step = piece.subarray(at, at + PACKED_STEP);
      const isPushed = pushed(inflate, step, false);
      idle = out.length > 0 ? 0 : idle + step.length;
      for (const part of out.splice(0)) {
        bytes += part.length;
        if (bytes > most) return 'tooLarge';
        await give(part);
      }
      if (!isPushed) return 'damaged';
    }
  }
  return pushed(inflate, new Uint8Array(0), true) ? 'whole' : 'cut';
}

/** The library throws on bytes that no packer writes, and on an end that comes too early. */
function pushed(inflate: Inflate, bytes: Uint8Array, isLast: boolean): boolean {
  try {
    inflate.push(bytes, isLast);
    return true;
  } catch {
    return false;
  }
}
