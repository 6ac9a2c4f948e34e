/**
 * Unpacks a zlib stream by the platform's own means.
 *
 * @param most gives up beyond so many bytes: a small file may unpack to any length
 * @returns null where the stream is broken or longer than told
 */
export async function inflate(pieces: readonly Uint8Array[], most: number): Promise<Uint8Array | null> {
  const packed = new Blob(pieces.map((piece) => new Uint8Array(piece)));
  const reader = packed.stream().pipeThrough(new DecompressionStream('deflate')).getReader();
  const whole = new Uint8Array(most);
  let length = 0;
  try {
    for (let part = await reader.read(); !part.done; part = await reader.read()) {
      if (length + part.value.length > most) {
        await reader.cancel();
        return null;
      }
      whole.set(part.value, length);
      length += part.value.length;
    }
  } catch {
    return null;
  }
  return whole.subarray(0, length);
}
