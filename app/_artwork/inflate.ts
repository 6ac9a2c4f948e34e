import { DamagedPicture } from '@/lib/embedding/embeddedPicture';
import { inflated } from './inflated';

/**
 * Unpacks a zlib stream as a whole.
 *
 * @param most gives up beyond so many bytes: a small file may unpack to any length
 * @returns null where the stream is broken or longer than told
 */
export async function inflate(pieces: readonly Uint8Array[], most: number): Promise<Uint8Array | null> {
  const whole = new Uint8Array(most);
  let length = 0;
  try {
    for await (const part of inflated(pieces)) {
      if (length + part.length > most) return null;
      whole.set(part, length);
      length += part.length;
    }
  } catch (error) {
    if (!(error instanceof DamagedPicture)) throw error;
    return null;
  }
  return whole.subarray(0, length);
}
