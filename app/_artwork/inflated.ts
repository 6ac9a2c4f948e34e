import { DamagedPicture } from '@/lib/embedding/embeddedPicture';
import { blobPart } from './blobPart';

/**
 * Unpacks a zlib stream by the platform's own means, piece by piece.
 *
 * @throws DamagedPicture where the stream is broken
 */
export async function* inflated(pieces: readonly Uint8Array[]): AsyncGenerator<Uint8Array, void> {
  const packed = new Blob(pieces.map(blobPart));
  const reader = packed.stream().pipeThrough(new DecompressionStream('deflate')).getReader();
  try {
    for (;;) {
      const part = await reader.read().catch((error: unknown) => {
        throw new DamagedPicture(error instanceof Error ? error.message : String(error));
      });
      if (part.done) return;
      yield part.value;
    }
  } finally {
    // Nothing where it has ended already.
    await reader.cancel().catch(() => undefined);
  }
}
