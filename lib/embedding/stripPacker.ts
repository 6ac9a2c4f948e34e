import type { Deflater, TakeBytes, Zip } from './embeddedPicture';

/** Rows wait until so many bytes are together: a call of the packer for each would cost more than the packing. */
const STRIP_BYTES = 262_144;

interface StripPacker {
  /** Room for a row, to be filled at once; resolves first where what is full has to go. */
  readonly room: (bytes: number) => Uint8Array | null;
  /** Hands on what is together. */
  readonly flush: () => Promise<void>;
  readonly end: () => Promise<void>;
}

/** Packs rows, a strip of them at a time. */
export function stripPacker(zip: Zip, take: TakeBytes): StripPacker {
  const deflater: Deflater = zip.deflater(take);
  let strip = new Uint8Array(STRIP_BYTES);
  let filled = 0;
  const flush = async () => {
    if (filled === 0) return;
    // A copy: what was handed on is read later.
    await deflater.write(strip.slice(0, filled));
    filled = 0;
  };
  return {
    room(bytes) {
      if (filled > 0 && filled + bytes > strip.length) return null;
      if (bytes > strip.length) strip = new Uint8Array(bytes);
      filled += bytes;
      return strip.subarray(filled - bytes, filled);
    },
    flush,
    async end() {
      await flush();
      await deflater.end();
    },
  };
}

/** @returns room for a row in a packer, after handing on what is full. */
export async function roomIn(packer: StripPacker, bytes: number): Promise<Uint8Array> {
  const room = packer.room(bytes);
  if (room !== null) return room;
  await packer.flush();
  return packer.room(bytes) ?? new Uint8Array(bytes);
}
