import { inflated } from '@/app/_artwork/inflated';
import type { Zip } from '@/lib/embedding/embeddedPicture';

/** zlib streams by the platform's own means. */
export const platformZip: Zip = {
  inflate: inflated,
  deflater(take) {
    const stream = new CompressionStream('deflate');
    const writer = stream.writable.getWriter();
    const taken = takeAll(stream.readable, take);
    // Whoever writes next hears of it.
    taken.catch((error) => writer.abort(error)).catch(() => undefined);
    return {
      async write(bytes) {
        await writer.ready;
        // Its failure is told by `ready` and by the end.
        writer.write(bytes).catch(() => undefined);
      },
      async end() {
        await writer.close();
        await taken;
      },
    };
  },
};

async function takeAll(
  readable: ReadableStream<Uint8Array>,
  take: (bytes: Uint8Array) => void,
): Promise<void> {
  const reader = readable.getReader();
  for (let part = await reader.read(); !part.done; part = await reader.read()) take(part.value);
}
